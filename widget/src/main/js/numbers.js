/**
 * Reads a number as a person types it: "1.5", "1,5" and, where the language groups digits so, "1,500".
 * Empty text is undefined. Text that is no number comes back as it is, so that the service can say what it accepts.
 */
export function typedNumber(text, lang = 'en') {
  const trimmed = String(text ?? '').trim();
  if (trimmed === '') {
    return undefined;
  }
  const value = Number(plain(trimmed.replace(/\s/g, ''), decimalMark(lang)));
  return Number.isFinite(value) ? value : trimmed;
}

function plain(text, mark) {
  const group = mark === ',' ? '.' : ',';
  const grouped = new RegExp(`^[-+]?\\d{1,3}(\\${group}\\d{3})+(\\${mark}\\d+)?$`);
  const ungrouped = grouped.test(text) ? text.split(group).join('') : text;
  return ungrouped.replace(',', '.');
}

function decimalMark(lang) {
  return new Intl.NumberFormat(lang).formatToParts(1.5).find((part) => part.type === 'decimal').value;
}

/** Rounds to a step without the tail that binary fractions leave. */
export function toStep(value, step) {
  return tidy(Math.round(value / step) * step);
}

/** Rounds a need up, never down: a bank that is needed must not shrink on paper. */
export function upToStep(value, step) {
  return tidy(Math.ceil(value / step - 1e-9) * step);
}

/** So many significant digits. */
export function significant(value, digits) {
  return value === 0 ? 0 : Number(value.toPrecision(digits));
}

function tidy(value) {
  return Number(value.toPrecision(12));
}
