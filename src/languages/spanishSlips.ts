import type { SlipKey } from '../teaching/index.js';
import type { SlipWords } from './Language.js';

const dimensions = 'Volver a medir la sección y compararla con lo que se introdujo y con su unidad.';
const forceUnit = 'Leer la unidad de la columna de la fuerza y comparar una fuerza con el indicador.';
const strainUnit = 'Leer en el archivo la unidad de la columna de la deformación.';
const extensionUnit = 'Leer la unidad de la columna de la extensión o del desplazamiento y comparar su último valor con la probeta.';

/** @internal Slips of students in Spanish, by their keys. */
export const spanishSlips: Readonly<Record<SlipKey, SlipWords>> = {
  // mistakes that explain properties as well, in their words
  'radius-for-diameter': { slip: 'Se introdujo el radio como diámetro.', advice: dimensions },
  'diameter-doubled': { slip: 'Se introdujo el doble del diámetro.', advice: dimensions },
  'section-a-tenth': { slip: 'Se introdujo la décima parte de cada dimensión de la sección.', advice: dimensions },
  'section-tenfold': { slip: 'Se introdujo diez veces cada dimensión de la sección.', advice: dimensions },
  'section-in-inches': { slip: 'La sección se introdujo en pulgadas.', advice: dimensions },
  'section-converted-twice': { slip: 'La sección en mm se tomó como pulgadas y se convirtió.', advice: dimensions },
  'piece-in-inches': { slip: 'La sección y las longitudes se introdujeron en pulgadas.', advice: dimensions },
  'lengths-in-inches': {
    slip: 'Las longitudes de la probeta se introdujeron en pulgadas.',
    advice: 'Comparar las longitudes introducidas y su unidad con la probeta.',
  },
  'force-in-kilonewtons': { slip: 'La fuerza está en kN y se leyó como N.', advice: forceUnit },
  'newtons-as-kilonewtons': { slip: 'La fuerza está en N y se leyó como kN.', advice: forceUnit },
  'force-in-kilograms-force': { slip: 'La fuerza está en kgf y se leyó como N.', advice: forceUnit },
  'newtons-as-kilograms-force': { slip: 'La fuerza está en N y se leyó como kgf.', advice: forceUnit },
  'force-in-pounds-force': { slip: 'La fuerza está en lbf y se leyó como N.', advice: forceUnit },
  'newtons-as-pounds-force': { slip: 'La fuerza está en N y se leyó como lbf.', advice: forceUnit },
  'strain-in-percent': { slip: 'La deformación está en % y se leyó como cociente.', advice: strainUnit },
  'ratio-as-percent': { slip: 'La deformación es un cociente y se leyó como %.', advice: strainUnit },
  'strain-in-microstrain': { slip: 'La deformación está en µm/m y se leyó como cociente.', advice: strainUnit },
  'extension-in-inches': { slip: 'La extensión está en pulgadas y se leyó como mm.', advice: extensionUnit },
  'extension-in-micrometres': { slip: 'La extensión está en µm y se leyó como mm.', advice: extensionUnit },
  // someone who computes by hand
  'square-for-circle': {
    slip: 'Como área se tomó el cuadrado del diámetro.',
    advice: 'El área de una sección redonda es π d²/4: falta el factor π/4.',
  },
  'area-in-square-centimetres': {
    slip: 'El área se introdujo en cm², así que la respuesta está en N/cm².',
    advice: 'Tomar el área en mm²: N/mm² es MPa, y 1 cm² son 100 mm².',
  },
  'area-in-square-metres': {
    slip: 'El área se introdujo en m², así que la respuesta está en Pa.',
    advice: 'Tomar el área en mm², o dividir los pascales por un millón.',
  },
  'answer-in-psi': {
    slip: 'La respuesta está en libras-fuerza por pulgada cuadrada.',
    advice: 'Dar la respuesta en MPa: 1 MPa son 145,04 psi.',
  },
  'answer-in-gigapascals': { slip: 'La respuesta está en GPa.', advice: 'Dar la respuesta en MPa: 1 GPa son 1000 MPa.' },
  'percent-for-ratio': {
    slip: 'Se dio un número en tanto por ciento donde se pide un cociente.',
    advice: 'El cociente es la centésima parte del tanto por ciento.',
  },
  'ratio-for-percent': {
    slip: 'Se dio un cociente donde se pide un tanto por ciento.',
    advice: 'Multiplicar el cociente por 100 para obtener el tanto por ciento.',
  },
  // on the way to Rm and Rp0.2
  'final-area': {
    slip: 'La fuerza máxima se dividió por el área tras la rotura.',
    advice: 'Rm se refiere al área inicial S0: la estricción solo se forma después del máximo.',
  },
  'force-at-fracture': {
    slip: 'Se tomó la fuerza en la rotura en lugar de la fuerza máxima.',
    advice: 'Buscar la fuerza más alta del registro; una probeta dúctil rompe con una fuerza menor.',
  },
  'true-fracture-stress': {
    slip: 'La fuerza en la rotura se dividió por el área tras la rotura.',
    advice: 'Esa es la tensión verdadera media en la rotura. Rm es la fuerza máxima dividida por el área inicial.',
  },
  'true-stress': {
    slip: 'Se dio la tensión verdadera a la fuerza máxima.',
    advice: 'Rm es una tensión ingenieril: no multiplicar por 1 + e.',
  },
  'force-for-stress': { slip: 'Se dio la fuerza máxima en N.', advice: 'Dividir la fuerza por el área inicial.' },
  'proof-for-maximum': {
    slip: 'Se dio el límite elástico convencional en lugar de la resistencia a la tracción.',
    advice: 'Rm es la tensión más alta de toda la curva.',
  },
  'maximum-for-proof': {
    slip: 'Se dio la resistencia a la tracción en lugar del límite elástico convencional.',
    advice: 'Rp0.2 está donde la recta desplazada un 0,2 % corta la curva, cerca del codo.',
  },
  'handbook-modulus-on-travel': {
    slip: 'La recta paralela se trazó con el módulo de elasticidad de un manual sobre una curva en función del desplazamiento que aún contiene la máquina.',
    advice: 'Trazar la recta con la pendiente de la propia curva; así la máquina deja de influir en la extensión prescrita.',
  },
  'origin-not-moved': {
    slip: 'La extensión prescrita se contó desde el cero del desplazamiento, con la holgura incluida.',
    advice: 'Prolongar la recta elástica hasta la tensión cero y contar la extensión prescrita desde ahí.',
  },
  'total-for-plastic': {
    slip: 'Se leyó la tensión al 0,2 % de extensión total.',
    advice: 'El 0,2 % es plástico: trazar por el 0,2 % de deformación una recta con la pendiente elástica, no una vertical.',
  },
  'offset-ten-times': { slip: 'La recta se desplazó un 2 % en lugar de un 0,2 %.', advice: 'Como cociente, 0,2 % es 0,002.' },
  'offset-one-tenth': { slip: 'La recta se desplazó un 0,02 % en lugar de un 0,2 %.', advice: 'Como cociente, 0,2 % es 0,002.' },
  // on the way to slopes, extensions and readings of the broken piece
  'frame-left-in': {
    slip: 'El desplazamiento aún contiene el alargamiento de la máquina.',
    advice: 'Restar del desplazamiento la flexibilidad multiplicada por la fuerza antes de calcular la deformación.',
  },
  'frame-taken-out': {
    slip: 'Se descontó del desplazamiento el alargamiento de la máquina.',
    advice: 'La pendiente mE se pide de la curva tal como se registró; sin la máquina, la pendiente es E.',
  },
  'gauge-for-parallel-length': {
    slip: 'La deformación se contó sobre la longitud inicial entre marcas L0.',
    advice: 'El desplazamiento se reparte sobre la longitud calibrada Lc: dividir por ella.',
  },
  'secant-to-proof': {
    slip: 'La pendiente se tomó desde el origen hasta el límite elástico convencional.',
    advice: 'Esa secante contiene extensión plástica: ajustar solo el tramo recto.',
  },
  'one-point-for-slope': {
    slip: 'Se dividió un solo punto: su tensión por su deformación, contada desde el cero del desplazamiento.',
    advice:
      'Antes de la recta hay holgura: tomar la pendiente del tramo recto, un incremento de tensión dividido por un incremento de deformación.',
  },
  'fracture-for-maximum': {
    slip: 'Se dio la extensión en la rotura en lugar de la extensión a la fuerza máxima.',
    advice: 'Leer la extensión a la fuerza más alta; más allá solo crece la estricción.',
  },
  'true-strain': {
    slip: 'Se dio la deformación verdadera.',
    advice: 'Las extensiones son deformaciones ingenieriles: no tomar el logaritmo.',
  },
  'parallel-for-gauge-length': {
    slip: 'El aumento de la longitud entre marcas se dividió por la longitud calibrada.',
    advice: 'A es (Lu − L0)/L0, ambas leídas entre las marcas.',
  },
  'parallel-length-taken-off': {
    slip: 'La longitud calibrada se tomó por la longitud inicial entre marcas.',
    advice: 'L0 es la distancia entre las marcas antes del ensayo, no la longitud de la parte calibrada.',
  },
  'final-length-as-base': {
    slip: 'El aumento se dividió por la longitud final entre marcas.',
    advice: 'Dividir por la longitud inicial entre marcas L0.',
  },
  'original-not-taken-off': { slip: 'La longitud final se dividió por la inicial y no se restó 1.', advice: 'A es (Lu − L0)/L0.' },
  'curve-for-marks': {
    slip: 'La extensión total en la rotura se leyó de la curva.',
    advice: 'Esa es At sobre la longitud calibrada, con la parte elástica incluida. A se mide entre las marcas de los dos trozos unidos.',
  },
  'travel-for-marks': {
    slip: 'Todo el desplazamiento hasta la rotura se dividió por la longitud inicial entre marcas.',
    advice:
      'El desplazamiento contiene la holgura, la máquina y la longitud fuera de las marcas. A se mide entre las marcas de los dos trozos unidos.',
  },
  'maximum-for-fracture': {
    slip: 'Se dio la extensión a la fuerza máxima.',
    advice: 'Esa es Agt. A se mide entre las marcas de la probeta rota.',
  },
  'diameter-for-area': { slip: 'Se dio la reducción del diámetro.', advice: 'Z compara áreas: elevar primero los diámetros al cuadrado.' },
  'final-area-as-base': { slip: 'La pérdida de área se dividió por el área tras la rotura.', advice: 'Dividir por el área inicial S0.' },
  'remaining-area': { slip: 'Se dio la parte del área que queda.', advice: 'Z es la parte que se pierde: (S0 − Su)/S0.' },
  'elongation-for-reduction': {
    slip: 'Se dio el alargamiento de rotura.',
    advice: 'Z compara las áreas de la sección antes y después del ensayo, no longitudes.',
  },
};
