// every adapter to a library is called once, so that a broken bundle fails here
import {
  analyseCurve,
  convert,
  fitCalibration,
  fitHollomon,
  fitLaw,
  fitModulus,
  InputError as Root,
  readRecord,
  required,
  round,
} from 'testpiece';
import { InputError } from 'testpiece/base';
const curve = { strain: [0.02, 0.05, 0.1, 0.15], stress: [366, 439, 505, 548] };
required(fitHollomon(curve));
const ramp = Array.from({ length: 30 }, (_, i) => i);
required(fitModulus({ strain: ramp, stress: ramp }));
required(fitCalibration({ indicated: [0, 1, 2, 3, 4], reference: [0, 10, 20, 30, 40] }));
required(fitLaw(curve, { parameters: { K: 700, n: 0.2 }, stress: (strain, { K, n }) => K * strain ** n }));
readRecord('time s;force kN;extension mm\n0;0,1;0\n1;0,2;0,1\n2;0,3;0,2\n3;0,4;0,3\n4;0,5;0,4\n5;0,6;0,5\n');
analyseCurve(curve);
if (convert(1, 'kN', 'N') !== 1000) throw new Error('units');
try {
  round({ diameter: -1 });
  throw new Error('a negative diameter passed');
} catch (error) {
  if (!(error instanceof InputError) || !(error instanceof Root)) throw error;
}
