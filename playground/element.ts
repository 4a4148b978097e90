type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;
type Child = Node | string;

const SVG = 'http://www.w3.org/2000/svg';

function dressed<T extends Element>(element: T, attributes: Attributes, children: readonly Child[]): T {
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : String(value));
  element.append(...children);
  return element;
}

/** An element of the page. */
export const h = <Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] => dressed(document.createElement(tag), attributes, children);

/** An element of a drawing. */
export const s = <Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[Tag] => dressed(document.createElementNS(SVG, tag), attributes, children);

/** A field with its label; the label stands above. */
export function labelled(label: string, control: HTMLElement): HTMLLabelElement {
  return h('label', { class: 'field' }, h('span', {}, label), control);
}

/** A choice from a list of words. */
export function choice(options: Readonly<Record<string, string>>, attributes: Attributes = {}): HTMLSelectElement {
  return h('select', attributes, ...Object.entries(options).map(([value, text]) => h('option', { value }, text)));
}

/** A button that does something. */
export function button(text: string, act: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = h('button', { type: 'button', ...attributes }, text);
  made.addEventListener('click', act);
  return made;
}
