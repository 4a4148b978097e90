import type { SlipKey } from '../teaching/index.js';
import type { SlipWords } from './Language.js';

const dimensions = 'Mesurer de nouveau la section, et la comparer à ce qui a été saisi et à l’unité de la saisie.';
const forceUnit = 'Lire l’unité de la colonne de la force, et comparer une force à l’affichage.';
const strainUnit = 'Lire dans le fichier l’unité de la colonne de la déformation.';
const extensionUnit = 'Lire l’unité de la colonne de l’extension ou du déplacement, et comparer sa dernière valeur à l’éprouvette.';

/** @internal Slips of students in French, by their keys. */
export const frenchSlips: Readonly<Record<SlipKey, SlipWords>> = {
  // mistakes that explain properties as well, in their words
  'radius-for-diameter': { slip: 'Le rayon a été saisi comme diamètre.', advice: dimensions },
  'diameter-doubled': { slip: 'Le double du diamètre a été saisi.', advice: dimensions },
  'section-a-tenth': { slip: 'Un dixième de chaque dimension de la section a été saisi.', advice: dimensions },
  'section-tenfold': { slip: 'Dix fois chaque dimension de la section a été saisi.', advice: dimensions },
  'section-in-inches': { slip: 'La section a été saisie en pouces.', advice: dimensions },
  'section-converted-twice': { slip: 'La section en mm a été prise pour des pouces et convertie.', advice: dimensions },
  'piece-in-inches': { slip: 'La section et les longueurs ont été saisies en pouces.', advice: dimensions },
  'lengths-in-inches': {
    slip: 'Les longueurs de l’éprouvette ont été saisies en pouces.',
    advice: 'Comparer les longueurs saisies et leur unité à l’éprouvette.',
  },
  'force-in-kilonewtons': { slip: 'La force est en kN et a été lue en N.', advice: forceUnit },
  'newtons-as-kilonewtons': { slip: 'La force est en N et a été lue en kN.', advice: forceUnit },
  'force-in-kilograms-force': { slip: 'La force est en kgf et a été lue en N.', advice: forceUnit },
  'newtons-as-kilograms-force': { slip: 'La force est en N et a été lue en kgf.', advice: forceUnit },
  'force-in-pounds-force': { slip: 'La force est en lbf et a été lue en N.', advice: forceUnit },
  'newtons-as-pounds-force': { slip: 'La force est en N et a été lue en lbf.', advice: forceUnit },
  'strain-in-percent': { slip: 'La déformation est en % et a été lue comme un rapport.', advice: strainUnit },
  'ratio-as-percent': { slip: 'La déformation est un rapport et a été lue en %.', advice: strainUnit },
  'strain-in-microstrain': { slip: 'La déformation est en µm/m et a été lue comme un rapport.', advice: strainUnit },
  'extension-in-inches': { slip: 'L’extension est en pouces et a été lue en mm.', advice: extensionUnit },
  'extension-in-micrometres': { slip: 'L’extension est en µm et a été lue en mm.', advice: extensionUnit },
  // someone who computes by hand
  'square-for-circle': {
    slip: 'L’aire a été prise égale au carré du diamètre.',
    advice: 'Une section ronde a pour aire π d²/4 : il manque le facteur π/4.',
  },
  'area-in-square-centimetres': {
    slip: 'L’aire a été saisie en cm², la réponse est donc en N/cm².',
    advice: 'Prendre l’aire en mm² : les N/mm² sont des MPa, et 1 cm² fait 100 mm².',
  },
  'area-in-square-metres': {
    slip: 'L’aire a été saisie en m², la réponse est donc en Pa.',
    advice: 'Prendre l’aire en mm², ou diviser les pascals par un million.',
  },
  'answer-in-psi': { slip: 'La réponse est en livres-force par pouce carré.', advice: 'Donner la réponse en MPa : 1 MPa fait 145,04 psi.' },
  'answer-in-gigapascals': { slip: 'La réponse est en GPa.', advice: 'Donner la réponse en MPa : 1 GPa fait 1000 MPa.' },
  'percent-for-ratio': {
    slip: 'Un nombre en pour cent a été donné là où un rapport est demandé.',
    advice: 'Le rapport est le centième du nombre en pour cent.',
  },
  'ratio-for-percent': {
    slip: 'Un rapport a été donné là où un nombre en pour cent est demandé.',
    advice: 'Multiplier le rapport par 100 pour l’avoir en pour cent.',
  },
  // on the way to Rm and Rp0.2
  'final-area': {
    slip: 'La force maximale a été divisée par l’aire après rupture.',
    advice: 'Rm se rapporte à l’aire initiale S0 : la striction ne se forme qu’après le maximum.',
  },
  'force-at-fracture': {
    slip: 'La force à la rupture a été prise à la place de la force maximale.',
    advice: 'Chercher la plus haute force de l’enregistrement ; une éprouvette ductile rompt à une force plus basse.',
  },
  'true-fracture-stress': {
    slip: 'La force à la rupture a été divisée par l’aire après rupture.',
    advice: 'C’est la contrainte vraie moyenne à la rupture. Rm est la force maximale sur l’aire initiale.',
  },
  'true-stress': {
    slip: 'La contrainte vraie à la force maximale a été donnée.',
    advice: 'Rm est une contrainte conventionnelle : ne pas multiplier par 1 + e.',
  },
  'force-for-stress': { slip: 'La force maximale en N a été donnée.', advice: 'Diviser la force par l’aire initiale.' },
  'proof-for-maximum': {
    slip: 'La limite conventionnelle d’élasticité a été donnée à la place de la résistance à la traction.',
    advice: 'Rm est la plus haute contrainte de toute la courbe.',
  },
  'maximum-for-proof': {
    slip: 'La résistance à la traction a été donnée à la place de la limite conventionnelle d’élasticité.',
    advice: 'Rp0.2 se lit là où la droite décalée de 0,2 % rencontre la courbe, près du genou.',
  },
  'handbook-modulus-on-travel': {
    slip: 'La droite décalée a été tracée avec le module d’élasticité d’un manuel, sur une courbe en fonction du déplacement qui contient encore le bâti.',
    advice: 'Tracer la droite avec la pente propre à la courbe ; le bâti disparaît alors du décalage.',
  },
  'origin-not-moved': {
    slip: 'Le décalage a été compté depuis le zéro du déplacement, jeu compris.',
    advice: 'Prolonger la droite élastique jusqu’à la contrainte nulle, et compter le décalage de là.',
  },
  'total-for-plastic': {
    slip: 'La contrainte à 0,2 % d’extension totale a été lue.',
    advice: 'Les 0,2 % sont plastiques : tracer, par 0,2 % de déformation, une droite de pente élastique et non une verticale.',
  },
  'offset-ten-times': { slip: 'La droite a été décalée de 2 % au lieu de 0,2 %.', advice: 'En rapport, 0,2 % s’écrit 0,002.' },
  'offset-one-tenth': { slip: 'La droite a été décalée de 0,02 % au lieu de 0,2 %.', advice: 'En rapport, 0,2 % s’écrit 0,002.' },
  // on the way to slopes, extensions and readings of the broken piece
  'frame-left-in': {
    slip: 'Le déplacement contient encore l’allongement du bâti.',
    advice: 'Retrancher du déplacement la complaisance multipliée par la force, avant de calculer la déformation.',
  },
  'frame-taken-out': {
    slip: 'L’allongement du bâti a été retiré du déplacement.',
    advice: 'La pente mE est demandée pour la courbe telle qu’elle a été enregistrée ; sans le bâti, la pente est E.',
  },
  'gauge-for-parallel-length': {
    slip: 'La déformation a été comptée sur la longueur initiale entre repères L0.',
    advice: 'Le déplacement se répartit sur la longueur calibrée Lc : diviser par celle-ci.',
  },
  'secant-to-proof': {
    slip: 'La pente a été prise de l’origine à la limite conventionnelle d’élasticité.',
    advice: 'Cette sécante contient de l’extension plastique : n’ajuster que la partie droite.',
  },
  'one-point-for-slope': {
    slip: 'Un seul point a été divisé : sa contrainte par sa déformation, comptée depuis le zéro du déplacement.',
    advice:
      'Du jeu précède la droite : prendre la pente sur la partie droite, un accroissement de contrainte sur un accroissement de déformation.',
  },
  'fracture-for-maximum': {
    slip: 'L’extension à la rupture a été donnée à la place de celle à la force maximale.',
    advice: 'Lire l’extension à la force la plus haute ; au-delà, seule la striction s’accentue.',
  },
  'true-strain': {
    slip: 'La déformation vraie a été donnée.',
    advice: 'Les extensions sont des déformations conventionnelles : ne pas prendre le logarithme.',
  },
  'parallel-for-gauge-length': {
    slip: 'L’allongement entre repères a été divisé par la longueur calibrée.',
    advice: 'A est (Lu − L0)/L0, les deux longueurs étant lues entre les repères.',
  },
  'parallel-length-taken-off': {
    slip: 'La longueur calibrée a été prise pour la longueur initiale entre repères.',
    advice: 'L0 est la distance entre les repères avant l’essai, non la longueur de la partie calibrée.',
  },
  'final-length-as-base': {
    slip: 'L’allongement a été divisé par la longueur ultime entre repères.',
    advice: 'Diviser par la longueur initiale entre repères L0.',
  },
  'original-not-taken-off': {
    slip: 'La longueur ultime entre repères a été divisée par la longueur initiale, sans retrancher 1.',
    advice: 'A est (Lu − L0)/L0.',
  },
  'curve-for-marks': {
    slip: 'L’extension totale à la rupture a été lue sur la courbe.',
    advice: 'C’est At sur la longueur calibrée, part élastique comprise. A se mesure entre les repères des deux morceaux rapprochés.',
  },
  'travel-for-marks': {
    slip: 'Tout le déplacement à la rupture a été divisé par la longueur initiale entre repères.',
    advice:
      'Le déplacement contient le jeu, le bâti et la longueur hors des repères. A se mesure entre les repères des deux morceaux rapprochés.',
  },
  'maximum-for-fracture': {
    slip: 'L’extension à la force maximale a été donnée.',
    advice: 'C’est Agt. A se mesure entre les repères de l’éprouvette rompue.',
  },
  'diameter-for-area': {
    slip: 'La réduction du diamètre a été donnée.',
    advice: 'Z compare des aires : élever d’abord les diamètres au carré.',
  },
  'final-area-as-base': { slip: 'La perte d’aire a été divisée par l’aire après rupture.', advice: 'Diviser par l’aire initiale S0.' },
  'remaining-area': { slip: 'La part de l’aire qui reste a été donnée.', advice: 'Z est la part perdue : (S0 − Su)/S0.' },
  'elongation-for-reduction': {
    slip: 'L’allongement après rupture a été donné.',
    advice: 'Z compare les aires de la section avant et après l’essai, non des longueurs.',
  },
};
