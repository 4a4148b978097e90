/** A hardening law of one's own, fitted to a flow curve (invented numbers) beside Hollomon's. */
import { considere, fitHollomon, fitLaw, hollomon, required } from 'testpiece';

const strain = Array.from({ length: 60 }, (_, i) => 0.005 * (i + 1));
const flow = { strain, stress: strain.map((e) => 420 - 220 * Math.exp(-9 * e)) };

const saturating = required(
  fitLaw(flow, {
    parameters: { top: 400, rise: 150, rate: 5 },
    stress: (e, { top, rise, rate }) => top - rise * Math.exp(-rate * e),
  }),
);
const { strengthCoefficient, exponent, rSquared } = required(fitHollomon(flow));
console.log(
  'own law',
  Object.entries(saturating.parameters)
    .map(([name, value]) => `${name} ${value.toFixed(3)}`)
    .join(', '),
);
console.log('Hollomon K', strengthCoefficient.toFixed(1), 'n', exponent.toFixed(4), 'R²', rSquared.toFixed(4));
const { top, rise, rate } = saturating.parameters;
const law = { stress: (e) => top - rise * Math.exp(-rate * e), rate: (e) => rise * rate * Math.exp(-rate * e) };
console.log(
  'necks at',
  required(considere(flow, { law })).strain.toFixed(4),
  'by the own law,',
  hollomon({ strengthCoefficient, exponent }).neckingStrain.toFixed(4),
  'by Hollomon',
);
