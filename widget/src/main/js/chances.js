/** Below this a chance is told as fewer than one of a thousand. */
export const SELDOM = 0.0005;

/* From here up a chance is at least one of a hundred. */
const ONE_OF_100 = 0.0095;

/** Every chance that the card tells of one answer. */
export function chancesOf({recommendation, endurance}) {
  const answers = [recommendation, endurance].filter(Boolean);
  return [
    recommendation.ruleOfThumb?.chanceOfRunningFlat,
    ...answers.flatMap(({chanceOfRunningFlat: chance}) => (chance ? [chance.value, chance.low, chance.high] : [])),
    ...answers.flatMap(({whatHelps}) => (whatHelps ?? []).map((one) => one.chanceOfRunningFlat)),
  ].filter((chance) => typeof chance === 'number');
}

/** Of how many trips all of these are counted, so that they can be compared: thousandths where one asks for it. */
export function denominatorOf(chances) {
  const counted = chances.filter((chance) => chance >= SELDOM);
  return counted.length > 0 && counted.every((chance) => chance >= ONE_OF_100) ? 100 : 1000;
}

/** A chance as people count: "3 of 100", "4 of 1,000", "fewer than 1 of 1,000". */
export function chanceInWords(share, lang, of) {
  const count = Math.round(share * of);
  return count === 0 ? `fewer than 1 of ${of.toLocaleString(lang)}` : `${count.toLocaleString(lang)} of ${of.toLocaleString(lang)}`;
}

/** The range that a chance lies in: "between 1 and 7 of 1,000". */
export function rangeInWords({low, high}, lang, of) {
  const [least, most] = [low, high].map((share) => Math.round(share * of));
  if (most === 0 || least === most) {
    return '';
  }
  return least === 0 ? `at most ${chanceInWords(high, lang, of)}` : `between ${least.toLocaleString(lang)} and ${chanceInWords(high, lang, of)}`;
}
