export { type FindingWords, type Language } from './Language.js';
export { chinese } from './chinese.js';
export { english } from './english.js';
export { french } from './french.js';
export { german } from './german.js';
export { languages } from './languages.js';
export { type SayOptions } from './requireLanguage.js';
export { sayFinding } from './sayFinding.js';
export { sayStep } from './sayStep.js';
export { sayWhatIf } from './sayWhatIf.js';
export { spanish } from './spanish.js';
export { phrases, type Phrase } from './phrases.js';
/** @internal */
export { wordsOf, type Words } from './wordsOf.js';
/** @internal */
export { takesPower } from './takesPower.js';
/** @internal */
export { requireLanguage } from './requireLanguage.js';
/** @internal */
export { changeInWords } from './sayWhatIf.js';
