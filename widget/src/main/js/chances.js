/** Below this a chance is told as fewer than one of a hundred: the model knows no smaller one well. */
export const SELDOM = 0.005;

/** A chance as people count: "3 of 100", "fewer than 1 of 100". */
export function chanceInWords(share, lang) {
  const count = Math.round(share * 100);
  return count === 0 ? 'fewer than 1 of 100' : `${count.toLocaleString(lang)} of 100`;
}

/** The range that a chance lies in: "between 1 and 7 of 100". */
export function rangeInWords({low, high}, lang) {
  const [least, most] = [low, high].map((share) => Math.round(share * 100));
  if (most === 0 || least === most) {
    return '';
  }
  return least === 0 ? `at most ${chanceInWords(high, lang)}` : `between ${least.toLocaleString(lang)} and ${chanceInWords(high, lang)}`;
}
