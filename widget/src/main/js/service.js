/** Where the script came from is where the service answers, unless the page says otherwise. */
const SCRIPT_URL = document.currentScript ? document.currentScript.src : location.href;

/* What a status without a list of faults means. */
const FAILURES = {404: 'missing', 405: 'missing', 410: 'missing', 429: 'busy', 503: 'busy', 511: 'stranger'};

const MOST_TRIES = 6;
const LONGEST_WAIT_SECONDS = 5;

export function ownService() {
  return new URL('.', SCRIPT_URL).href;
}

/**
 * Posts one request, for the figures alone or with the way to one of them. Resolves to {answer}, to {problem} whose errors name fields, or to {failure: its kind, status, waitSeconds};
 * rejects only when it was aborted. No cookie is sent and none is kept.
 */
export async function post(service, operation, body, signal, explained) {
  const way = explained ? `?explain=${encodeURIComponent(explained)}` : '';
  const result = await exchange(service, `v1/${operation}${way}`, signal, {
    method: 'POST',
    headers: {'Content-Type': 'application/json', 'Accept': 'application/json, application/problem+json', 'Prefer': 'return=minimal'},
    body: JSON.stringify(body),
  });
  if (result.answer) {
    result.answer.explain = once((pointer) => patiently(() => post(service, operation, body, undefined, pointer)));
  }
  return result;
}

/** Asks for each thing once, however often the card is drawn anew; what did not come may be asked for again. */
function once(ask) {
  const asked = new Map();
  return async (pointer) => {
    asked.set(pointer, asked.get(pointer) ?? ask(pointer));
    const result = await asked.get(pointer);
    if (result.failure) {
      asked.delete(pointer);
    }
    return result;
  };
}

/** Asks again, as often as a person would wait for, where the service only has too much to do just now. */
async function patiently(ask) {
  let result = await ask();
  for (let tries = 1; tries < MOST_TRIES && result.failure === 'busy'; tries += 1) {
    const seconds = Math.min(result.waitSeconds ?? 1, LONGEST_WAIT_SECONDS);
    await new Promise((done) => setTimeout(done, seconds * 1000));
    result = await ask();
  }
  return result;
}

export function get(service, path, signal) {
  return exchange(service, `v1/${path}`, signal, {headers: {Accept: 'application/json'}});
}

async function exchange(service, path, signal, options) {
  try {
    const response = await fetch(new URL(path, service), {...options, signal, credentials: 'omit'});
    return heard(response, objectIn(await response.text()));
  } catch (failure) {
    if (failure.name === 'AbortError') {
      throw failure;
    }
    return {failure: navigator.onLine ? 'unreached' : 'offline'};
  }
}

function heard(response, written) {
  const {ok, status} = response;
  if (ok) {
    return written ? {answer: written} : {failure: 'stranger'};
  }
  return written?.errors?.length > 0
    ? {problem: written}
    : {failure: FAILURES[status] ?? (status < 500 ? 'refused' : 'broken'), status, waitSeconds: secondsOf(response.headers.get('Retry-After'))};
}

/** The JSON object of a body; undefined for anything else, such as a network's sign-in page. */
function objectIn(text) {
  try {
    const written = JSON.parse(text);
    return written && typeof written === 'object' ? written : undefined;
  } catch {
    return undefined;
  }
}

/** Retry-After of RFC 9110, section 10.2.3: seconds, or a date. */
export function secondsOf(retryAfter, now = Date.now()) {
  const seconds = /^\d+$/.test(retryAfter ?? '') ? Number(retryAfter) : (Date.parse(retryAfter) - now) / 1000;
  return Number.isFinite(seconds) ? Math.ceil(seconds) : undefined;
}
