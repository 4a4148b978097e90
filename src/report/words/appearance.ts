/** Grounds on which a figure can stand. */
export type Appearance = 'light' | 'dark';

/** @internal Colours of a figure. */
export interface Colours {
  readonly ground: string;
  readonly curve: string;
  readonly line: string;
  readonly law: string;
  readonly mark: string;
  readonly words: string;
  readonly axis: string;
  readonly grid: string;
}

/** @internal Colours of Okabe and Ito, told apart by colour-blind readers; in black and white the dashes tell. */
export const colours: Readonly<Record<Appearance, Colours>> = {
  light: {
    ground: 'white',
    curve: '#0072b2',
    line: '#d55e00',
    law: '#007a5a',
    mark: '#222222',
    words: '#333333',
    axis: '#777777',
    grid: '#e4e4e0',
  },
  dark: {
    ground: '#1b1b19',
    curve: '#56b4e9',
    line: '#e69f00',
    law: '#3fc495',
    mark: '#f0f0ea',
    words: '#d8d8d0',
    axis: '#8e8e88',
    grid: '#3a3a36',
  },
};
