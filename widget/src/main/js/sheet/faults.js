import {faultWords} from './faultwords.js';
import {clearFaults, showFault} from './field.js';

/** Tells beside its control what the service can't use, and nothing of a control while it is being typed into. */
export class Faults {
  /** @param desk {shadowRoot, reader, holderOf: finds the control of a JSON Pointer, refused: tells above the answer} */
  constructor(desk) {
    this.desk = desk;
    this.waiting = [];
    desk.shadowRoot.addEventListener('input', ({target}) => {
      this.typing = target.type === 'text' ? target : undefined;
    });
    for (const rest of ['change', 'focusout']) {
      desk.shadowRoot.addEventListener(rest, () => {
        this.typing = undefined;
        this.tell();
      });
    }
  }

  /** What was wrong with the last question; it is told once no control of it is being typed into. */
  hear(errors) {
    this.waiting = errors.map(({pointer}) => ({pointer, holder: this.desk.holderOf(pointer)}));
    this.tell();
  }

  /** Something was entered since: what is still to be told may no longer be so. */
  forget() {
    this.waiting = [];
  }

  clear() {
    this.forget();
    clearFaults(this.desk.shadowRoot);
  }

  tell() {
    const faults = this.waiting;
    if (faults.length === 0 || faults.some(({holder}) => holder && holder.contains(this.typing))) {
      return;
    }
    this.clear();
    const told = faults.filter(({holder}) => holder);
    told.forEach(({holder}) => showFault(holder, faultWords(fieldOf(holder), holder.querySelector('input, select').value, this.desk.reader)));
    this.desk.refused(told.length > 0, faults.filter(({holder}) => !holder).map(({pointer}) => pointer));
  }
}

/** The field's own name in the name of its control: "loads.7.power" is "power". */
function fieldOf({dataset}) {
  return dataset.control.split('.').pop();
}
