import { h } from './element.js';
import { words } from './words.js';

/** Lays the sections out under the head of the page; `first` is where the link beside the content leads. */
export function layOut(sections: readonly HTMLElement[], first: HTMLElement) {
  const live = h('p', { role: 'status', class: 'visually-hidden', id: 'live' });
  const skip = h('a', { class: 'skip', href: `#${first.id}` }, words.skip);
  skip.addEventListener('click', (event) => {
    // the part of the address behind # belongs to the state
    event.preventDefault();
    first.focus();
  });
  document.title = `testpiece: ${words.title}`;
  document.body.append(
    skip,
    h(
      'header',
      {},
      h('p', { class: 'mark' }, 'testpiece'),
      h('h1', {}, words.title),
      h('p', { class: 'lead' }, words.lead),
      h('p', { class: 'soft' }, words.private),
    ),
    h('main', {}, ...sections),
    live,
  );
  /** Says something to those who do not see what has changed. */
  const say = (text: string): void => {
    live.textContent = text;
  };
  return { say };
}
