import {WaysidePlanner} from './planner.js';

if (!customElements.get('wayside-planner')) {
  customElements.define('wayside-planner', WaysidePlanner);
}
