import { chinese } from './chinese.js';
import { english } from './english.js';
import { french } from './french.js';
import { german } from './german.js';
import type { Language } from './Language.js';
import { spanish } from './spanish.js';

/** Every language there is, English first; importing this list bundles all of them. */
export const languages: readonly Language[] = [english, german, french, spanish, chinese];
