export { materialFamilies, type MaterialFamily, type MaterialFamilyKey, type UsualRange } from './materialFamilies.js';
export { materialFamily } from './materialFamily.js';
