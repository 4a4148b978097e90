import { english } from './english.js';
import { french } from './french.js';
import { german } from './german.js';
import type { Language } from './Language.js';

/** Every language there is, English first; importing this list bundles all of them. */
export const languages: readonly Language[] = [english, german, french];
