import {h} from '../dom.js';

/* What is so when no answer came, by kind. */
const WORDS = {
  offline: 'You are offline: the service can’t be reached',
  unreached: 'The service can’t be reached',
  busy: 'The service has its hands full just now',
  missing: 'No such service answers at the address that this page names',
  broken: 'The service failed at this',
  refused: 'The service turned this down',
  stranger: 'Something else answered in the service’s place, perhaps the sign-in page of a network. Open another page to sign in',
  unreadable: 'An answer came that this card can’t read: it may be older than its service',
};

/**
 * Says what is so, that nothing entered is lost, and when it is asked again.
 *
 * @param failure {failure: the kind, status: of HTTP where one came, seconds: until it is asked again by itself}
 * @param partly whether the main answer stands and only a part is missing
 * @param old whether an older answer is in sight
 */
export function troubleView({failure, status, seconds}, {partly, old}, again) {
  const lines = [
    `${partly ? 'A part of the answer is still missing. ' : ''}${WORDS[failure]}${status ? ` (${status})` : ''}.`,
    `What you entered is still here.${old ? ' The answer below belongs to what stood there before.' : ''}`,
    seconds ? `It is asked again by itself ${failure === 'offline' ? 'once you are online' : `in ${seconds} s`}.` : '',
  ];
  return [h('p', {class: failure}, lines.filter(Boolean).join(' ')), h('button', {type: 'button', class: 'plain', click: again}, 'Ask again')];
}
