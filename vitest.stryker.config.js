/** Tests that mutation testing runs: with FLOOR=force those of that floor and its part of the handbook, else those of all floors that are changed. */
import { defineConfig } from 'vitest/config';

const handbook = {
  geometry: '{sections,lengths,elongation}',
  force: '{verification,frame,hydraulics}',
  record: '{real-curves}',
  curve: '{elastic-line,tension,compliance,frame,rates,bending,compression,ramberg-osgood}',
  hardening: '{compression,hardening,laws,ramberg-osgood,sheet,after-necking}',
};
/** Tests of a floor and its part of the handbook. */
export const testsOf = (floor) => [`test/${floor}/**/*.test.ts`, `test/handbook/${handbook[floor]}.test.ts`];

const { FLOOR: floor } = process.env;
const include = floor ? testsOf(floor) : ['test/{geometry,force,record,curve,hardening,handbook}/**/*.test.ts'];

export default defineConfig({ test: { include, exclude: ['test/record/fuzz.test.ts'] } });
