const MINUTES_PER_DAY = 1440;

/** Minutes after midnight of "18:30"; undefined for anything else. */
export function minuteOf(time) {
  const match = /^(\d{2}):(\d{2})$/.exec(time ?? '');
  return match ? Number(match[1]) * 60 + Number(match[2]) : undefined;
}

/** Length of a window in hours. One that ends before it starts passes midnight; equal ends are the whole day. */
export function windowHours(from, to) {
  const [start, end] = [minuteOf(from), minuteOf(to)];
  if (start === undefined || end === undefined) {
    return undefined;
  }
  const minutes = (end - start + MINUTES_PER_DAY) % MINUTES_PER_DAY;
  return (minutes === 0 ? MINUTES_PER_DAY : minutes) / 60;
}

/** The windows of a line as the service takes them: [{from, to}]. An empty pair is left out. */
export function windowsOf({windowFrom, windowTo, againFrom, againTo}) {
  return [{from: windowFrom, to: windowTo}, {from: againFrom, to: againTo}].filter(({from, to}) => from || to);
}

/** Hours of all windows together; undefined when there is none, or when one is half entered. */
export function hoursOfWindows(windows) {
  return windows.length === 0 ? undefined : windows.reduce((sum, {from, to}) => sum + windowHours(from, to), 0) || undefined;
}
