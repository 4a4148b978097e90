import { chineseCautions } from './chineseCautions.js';
import { chineseFindings } from './chineseFindings.js';
import { chinesePhrases } from './chinesePhrases.js';
import { chineseSlips } from './chineseSlips.js';
import { chineseValueWords } from './chineseValueWords.js';
import type { Language } from './Language.js';

/** Chinese, in simplified characters. */
export const chinese: Language = {
  tag: 'zh-Hans',
  name: '中文',
  decimalSign: '.',
  findings: chineseFindings,
  cautions: chineseCautions,
  slips: chineseSlips,
  phrases: { ...chineseValueWords, ...chinesePhrases },
};
