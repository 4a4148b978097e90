import type { CautionTag } from '../methods/index.js';

/** @internal Cautions in Spanish, by what they speak of. */
export const spanishCautions: Readonly<Record<CautionTag, string>> = {
  force:
    'Cerrar el resguardo y llevar protección ocular antes de aplicar cualquier fuerza; colocarse fuera de la línea de carga. La máquina, el aceite y las mangueras liberan energía almacenada cuando una probeta cede; la energía que se indica es un valor mínimo.',
  guard: 'No abrir nunca el resguardo ni meter la mano por detrás de él con carga; leer los comparadores desde fuera.',
  brittle: 'Las probetas duras, frágiles o entalladas proyectan fragmentos sin previo aviso.',
  extensometer:
    'Retirar un extensómetro solo a una carga a la que el procedimiento propio lo permita; medir la zona de estricción sin carga o por medios ópticos.',
  grips: 'Mantener las manos fuera de las mordazas mientras se cierran y mientras la probeta se endereza al tirar de ella.',
  platens:
    'Mantener las manos fuera del espacio entre los platos. Una probeta comprimida que no esté a escuadra o centrada puede salir despedida hacia un lado.',
  column: 'Una probeta esbelta pandea de repente y salta; ninguna fuerza de pandeo calculada es una carga segura.',
  tool: 'Mantener las manos fuera de la herramienta, y del espacio entre ella y la probeta, mientras se cierra; colocar la probeta solo con el accionamiento parado y sin fuerza.',
  span: 'Una barra doblada puede escapar de sus apoyos o recuperarse de golpe al soltarla; una dura se parte en dos trozos que salen despedidos.',
  shear: 'Un pasador o un recorte cizallado sale expulsado de la herramienta: prever cómo retenerlo y colocarse fuera de su trayectoria.',
  ball: 'Las bolas y las probetas duras pueden estallar bajo la fuerza: resguardo cerrado, ojos protegidos y ninguna bola desportillada o fisurada.',
  blank:
    'Las probetas de embutición tienen bordes cortantes y la copa un borde desgarrado; descargar por completo antes de abrir la sujeción.',
  limits:
    'No sobrepasar la capacidad, la carrera ni el campo de uso de las mordazas y las herramientas; no anular nunca la válvula limitadora de presión ni subir su tarado. Si una probeta no cede a la mayor fuerza admitida, quitar la presión y no acercarse antes de que haya desaparecido.',
  oil: 'Quitar la presión por completo antes de abrir un racor o el resguardo: un chorro de aceite puede penetrar en la piel y es una urgencia médica. El aceite puede estar caliente, y en el suelo hace resbalar.',
  drive:
    'El accionamiento puede moverse por sí solo en la rotura o al descargar: seguir las instrucciones de la máquina; cerca de él, nada de mangas sueltas, pelo largo ni guantes.',
  edges: 'Los bordes rotos cortan, y el lugar de la rotura puede estar caliente.',
  alloys: 'Las virutas y el polvo de aleaciones de magnesio, titanio y berilio son un peligro en sí mismos: fuego o intoxicación.',
  heavy:
    'Los platos, las herramientas y las piezas pesan mucho: levantarlos con ayuda o con medios de elevación, y fijar la máquina a su banco.',
  wiring: 'Cortar la corriente antes de trabajar en el transmisor, su cableado o el accionamiento.',
  decisions:
    'Estos resultados describen estas probetas. No son valores de cálculo. Las decisiones sobre estructuras, equipos a presión, aparatos de elevación, aeronaves o usos médicos siguen el código aplicable y corresponden a un profesional titulado o autorizado de otro modo; la aceptación exige una máquina verificada, un extensómetro cuando se requiera y un laboratorio competente. La legislación local, los códigos y las normas del taller prevalecen sobre todo lo que aquí se dice.',
};
