export * from './units/index.js';
export * from './geometry/index.js';
export * from './force/index.js';
export * from './record/index.js';
export * from './curve/index.js';
export * from './hardening/index.js';
export * from './methods/index.js';
export * from './base/index.js';
