/** Where the script came from is where the service answers, unless the page says otherwise. */
const SCRIPT_URL = document.currentScript ? document.currentScript.src : location.href;

export function ownService() {
  return new URL('.', SCRIPT_URL).href;
}

/**
 * Posts one request. Resolves to {answer}, {problem} or {offline: true}; rejects only when it was aborted.
 * No cookie is sent and none is kept.
 */
export function post(service, operation, body, signal) {
  return exchange(service, `v1/${operation}`, signal, {
    method: 'POST',
    headers: {'Content-Type': 'application/json', 'Accept': 'application/json, application/problem+json'},
    body: JSON.stringify(body),
  });
}

export function get(service, path, signal) {
  return exchange(service, `v1/${path}`, signal, {headers: {Accept: 'application/json'}});
}

async function exchange(service, path, signal, options) {
  let response;
  try {
    response = await fetch(new URL(path, service), {...options, signal, credentials: 'omit'});
  } catch (failure) {
    return unreached(failure);
  }
  return response.ok ? {answer: await response.json()} : {problem: await problemOf(response)};
}

function unreached(failure) {
  if (failure.name === 'AbortError') {
    throw failure;
  }
  return {offline: true};
}

async function problemOf(response) {
  const written = (response.headers.get('Content-Type') ?? '').includes('json') ? await response.json().catch(() => ({})) : {};
  return {title: `The service answered ${response.status}`, errors: [], ...written, status: response.status};
}
