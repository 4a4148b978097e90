import type { FindingCode } from '../base/index.js';
import type { FindingWords } from './Language.js';

/** @internal Findings in Spanish. */
export const spanishFindings: Readonly<Record<FindingCode, FindingWords>> = {
  // the record
  'time-missing': {
    message: 'El registro no tiene columna de tiempo: se desconocen las velocidades, las pausas y la regularidad de la carga.',
    remedy: 'Registrar el tiempo con cada dato; no se supone ningún intervalo de tiempo.',
  },
  'time-not-increasing': {
    message: 'Retrocesos del tiempo: {count}, el primero en el dato {first}; no se dan velocidades.',
    remedy: 'Comprobar el reloj del registrador, o si el archivo contiene dos ensayos.',
  },
  'time-gap': {
    message: 'Huecos en el tiempo: {count}; el más largo, de {longest} s, en el dato {first}, cuando los datos llegan cada {usual} s.',
    remedy: 'Comprobar que ningún hueco coincida con la cedencia, la fuerza máxima o la rotura; una pausa del registrador en ese momento hace perder el suceso.',
  },
  'time-unit-changes': {
    message: 'A partir del dato {sample} los intervalos de tiempo son {factor} veces los anteriores: dos unidades de tiempo, o un reloj puesto de nuevo en hora.',
    remedy: 'Reconstruir el tiempo a partir de la frecuencia del registrador (`rebuildTime`), o prescindir del tiempo; las velocidades calculadas a través del cambio carecen de sentido.',
  },
  'time-coarse': {
    message: 'El {share} % de los datos lleva el mismo tiempo que el dato anterior: el reloj avanza en pasos de {step} s, más gruesos que el registro.',
    remedy: 'Registrar el tiempo con más cifras, o reconstruirlo a partir de la frecuencia del registrador (`rebuildTime`).',
  },
  'time-unit-unlikely': {
    message: '{samples} datos en {duration} s, uno cada {usual} s: nadie carga así a mano; puede que la unidad de tiempo sea otra.',
    remedy: 'Indicar la unidad de tiempo al leer el archivo.',
  },
  'force-sign-reversed': {
    message: 'La fuerza baja hasta {lowest} N y solo sube hasta {highest} N: es probable que la tracción se cuente como negativa.',
    remedy: 'Invertir el signo de la fuerza (`reverseSign`) y comprobar el cableado o el criterio de signos del registrador.',
  },
  'channels-exchanged': {
    message: 'El desplazamiento cae en la muestra {sample}, desde {highest} mm como máximo, mientras la fuerza sigue en {force} N: es probable que fuerza y desplazamiento estén intercambiados.',
    remedy: 'Indicar las columnas al leer el archivo (`columns`) y revisar los conectores del registrador.',
  },
  'motion-sign-reversed': {
    message: 'El canal de {column} va de {first} a {last} {unit} mientras la fuerza sube: su signo está invertido.',
    remedy: 'Invertir su signo (`reverseSign`) y comprobar el criterio de signos del registrador.',
  },
  spikes: {
    message: 'Picos espurios en el canal de {column}: {count}; el mayor se aparta {largest} {unit} de los datos vecinos, en el dato {first}.',
    remedy: 'Se sustituyen por la recta entre los datos vecinos, salvo que se desactive; buscar un conector flojo o una perturbación.',
  },
  'signal-drops-out': {
    message: 'El canal de {column} no da señal a partir del dato {first} y después la recupera; datos sin lectura: {count}.',
    remedy: 'Comprobar el conector y el cable; de lo ocurrido entretanto en el ensayo no se sabe nada.',
  },
  'signal-strays': {
    message: 'El canal de {column} salta {height} {unit} fuera de su línea en el dato {first} y vuelve de otro salto; datos afectados: {count}. Casi ninguna probeta ni accionamiento hace eso.',
    remedy: 'Una recta ocupa su lugar, salvo que se desactive; de lo ocurrido entretanto en el ensayo no se sabe nada. Buscar un conector flojo, una perturbación o una mano en el cable.',
  },
  'force-bulges': {
    message: 'La fuerza se aparta {height} N de su curva en el dato {first} y vuelve; datos afectados: {count}. Mientras el desplazamiento sigue así, ni una probeta ni un accionamiento hace eso.',
    remedy: 'Una recta ocupa su lugar, salvo que se desactive; de lo ocurrido entretanto en el ensayo no se sabe nada. Buscar un golpe contra el bastidor, una mano en el cable o una perturbación del transmisor.',
  },
  'signal-noisy': {
    message: 'El ruido del canal de {column} es de {noise} {unit}, el {share} % de su recorrido.',
    remedy: 'Apantallar la señal y conectarla a tierra; todos los valores llevan esta dispersión.',
  },
  'reading-coarse': {
    message: 'El canal de {column} se leyó en pasos de {step} {unit}, {counts} en todo el ensayo.',
    remedy: 'Un campo de medida más fino del registrador o un sensor más fino da más cifras; por debajo de unos cientos de pasos, la resolución limita lo que se lee de él: de una fuerza las resistencias, de un movimiento las deformaciones y las profundidades.',
  },
  'motion-saturated': {
    message: 'El canal de {column} permanece en su valor final {value} {unit} durante los últimos {count} datos mientras la fuerza continúa: el sensor estaba probablemente en su tope.',
    remedy: 'Comprobar la carrera del sensor; las deformaciones a partir de ahí son demasiado pequeñas.',
  },
  'late-tare': {
    message: 'La fuerza se puso a cero en el dato {sample}, con un salto de {step} N, mientras nada se movía; lo anterior se cuenta desde otro cero.',
    remedy: 'No hay que hacer nada; el cero debe ponerse antes de sujetar la probeta por ambos extremos.',
  },
  'zero-before-loading': {
    message: 'Antes de cargar, la fuerza indica {force} N, el {share} % de su máximo.',
    remedy: 'Descontarla (`tare`) si la probeta estaba sujeta por un solo extremo; el cero debe ponerse antes de sujetarla por ambos.',
  },
  'zero-after-fracture': {
    message: 'Tras la rotura, la fuerza indica {force} N, el {share} % de su máximo, y ningún tramo anterior a la carga permite conocer el cero.',
    remedy: 'Registrar unos segundos antes de cargar; todas las fuerzas pueden llevar este error de cero.',
  },
  'grip-slip': {
    message: 'La probeta deslizó en las mordazas en el dato {sample}: un avance de {way} {unit} en el canal de {column} que la fuerza no explica (la fuerza bajó {fall} N).',
    remedy: 'Limpiar o cambiar las mordazas; las deformaciones por desplazamiento posteriores al deslizamiento son demasiado grandes si este no se elimina (`joinSlips`). Rm, ReH y ReL no se ven afectadas; los límites convencionales y los alargamientos posteriores sí.',
  },
  'drive-reversed': {
    message: 'En el dato {sample} el accionamiento retrocedió {way} {unit} en el canal de {column} y con él la fuerza, {fall} N: la probeta se descargó y se volvió a cargar.',
    remedy: 'Cargar en un solo sentido; la evaluación deja fuera ese tramo y la curva lo conserva (`loadingEnvelope` lo quita también del registro).',
  },
  'motion-backlash': {
    message: 'El canal de {column} retrocedió {way} {unit} en el dato {sample}, mucho más de lo que corresponde a una bajada de la fuerza de {fall} N: hay juego en el accionamiento o en el sensor.',
    remedy: 'Buscar juego en el husillo, los bulones o el sensor; las deformaciones cercanas son dudosas.',
  },
  'force-zero-moved': {
    message: 'La fuerza baja {fall} N de golpe en el dato {sample} y sigue desde ahí: su cero se movió durante el ensayo.',
    remedy: 'Unir los tramos de fuerza (`restoreZero`) solo si es eso lo que ocurrió; no pulsar nunca el cero con la probeta cargada.',
  },
  'motion-jumps': {
    message: 'Saltos del canal de {column} mientras la fuerza continúa: {count}; el mayor, de {largest} {unit}, en el dato {sample}: el sensor deslizó o se reajustó.',
    remedy: 'Unir los tramos (`joinJumps`) si nadie tocó la probeta; las extensiones medidas a través de un salto son dudosas.',
  },
  'extensometer-slipped': {
    message: 'Canal de {column}: retrocede de golpe mientras la fuerza sigue la recta elástica; veces: {count}; la mayor, de {largest} {unit}, en el dato {sample}: el extensómetro deslizó.',
    remedy: 'Limpiar y apretar las cuchillas; unir los tramos (`joinJumps`) o dejarlo fuera de la ventana elástica: un deslizamiento hacia atrás hace la pendiente demasiado grande.',
  },
  'channels-out-of-step': {
    message: 'El desfase entre la fuerza y el movimiento, contado en datos, es de {samples}: sus velocidades concuerdan con una correlación de {correlation} una vez desplazadas, y de {without} tal como se registraron.',
    remedy: 'Registrar ambos canales con un mismo reloj, o alinearlos (`alignChannels`); un desfase curva la recta elástica.',
  },
  'several-tests': {
    message: 'El registro contiene {count} ensayos; el segundo empieza en el dato {second}.',
    remedy: 'Hacer un archivo de cada uno, o dividir el registro (`splitTests`), y evaluar cada uno por su cuenta.',
  },
  'file-cut-off': {
    message:
      'El archivo termina en medio de la línea {line} ({text}): no le sigue un fin de línea y tiene menos celdas o cifras que las líneas anteriores. Se ha omitido; lo que el registrador escribió después no se conoce.',
    remedy: 'Copiar de nuevo el archivo desde el registrador; este no dice si la probeta se rompió.',
  },
  'channel-empty': {
    message: 'El canal de {column} no contiene ni dos números: el sensor no estaba puesto o no se registró.',
    remedy: 'Comprobar la columna; el ensayo se evalúa como si no existiera.',
  },
  'samples-repeated': {
    message: 'El {share} % de los datos repite el anterior: el registrador iba más rápido que el sensor.',
    remedy: 'Los datos repetidos embellecen la dispersión de una pendiente; registrar al ritmo del sensor más lento.',
  },
  'force-saturated': {
    message: 'La fuerza permanece en su valor más alto, {force} N, durante {count} datos: el canal estaba en su tope, o la probeta fluye a esta fuerza.',
    remedy: 'Comprobar el alcance del transmisor y del registrador; la fuerza máxima verdadera, y un límite leído en la cima plana, pueden ser mayores.',
  },
  'force-does-not-rise': {
    message: 'La fuerza no sube en ningún momento: va de {first} N al principio a {highest} N como máximo.',
    remedy: 'Comprobar el signo y la columna de la fuerza, y que el archivo contenga un tramo de carga.',
  },
  'force-looks-like-kilonewton': {
    message: 'Una tensión máxima de {stress} MPa es demasiado baja para un metal: puede que la fuerza esté en kN donde se esperaban N.',
    remedy: 'Indicar la unidad de la fuerza al leer el archivo.',
  },
  'strain-looks-like-percent': {
    message: 'Una deformación de {strain} con una pendiente de {slope} MPa no corresponde a un metal: puede que la deformación esté en % donde se esperaba un cociente.',
    remedy: 'Indicar la unidad de la deformación al leer el archivo.',
  },
  'record-starts-late': {
    message: 'El primer dato lleva ya el {share} % de la fuerza máxima: falta el principio de la carga.',
    remedy: 'Poner en marcha el registrador antes de cargar; el cero de la fuerza no se puede comprobar.',
  },
  'zero-drift': {
    message: 'Tras la rotura, la fuerza indica {force} N ({share} % de la máxima) de diferencia con el cero anterior al ensayo.',
    remedy: 'Comprobar el cero del canal de fuerza antes y después de cada ensayo; todas las fuerzas llevan esta duda.',
  },
  'repair-without-effect': { message: 'La reparación {repair} se pidió y no cambió nada: {why}.', remedy: 'Omitirla, o ver en la comprobación del registro qué reparaciones tendrían efecto.' },
  'tail-after-fracture': {
    message: 'Se dejaron fuera datos posteriores a la rotura (número: {count}); sirvieron para comprobar el cero.',
    remedy: 'No hay que hacer nada.',
  },
  'fracture-not-recorded': {
    message: 'El registro no contiene ninguna caída brusca de la fuerza; su último dato se toma como rotura.',
    remedy: 'Registrar hasta que la probeta haya roto; un registro cortado da una extensión en la rotura demasiado pequeña y, si la fuerza aún subía, también una fuerza máxima demasiado pequeña.',
  },
  'stopped-before-fracture': {
    message: 'El registro termina antes de que la probeta rompiera, con la fuerza al {share} % de su máximo.',
    remedy: 'Registrar hasta la rotura; la resistencia puede seguir siendo válida si se rebasó la fuerza máxima.',
  },
  'maximum-at-end': {
    message: 'La fuerza más alta está al final del registro: el ensayo o su registro se paró antes de tiempo, o la probeta rompió a la fuerza máxima.',
    remedy: 'Indicar cuál es el caso, midiendo la probeta rota (Lu, Su); la resistencia de una probeta que no rompió allí es solo al menos así de grande, y las extensiones a la fuerza máxima no se conocen.',
  },
  'maximum-is-spike': {
    message: 'El máximo es un único dato, {excess} MPa por encima de sus vecinos.',
    remedy: 'Comprobar si hay un pico espurio en la señal antes de dar la resistencia.',
  },
  'few-points-in-elastic-part': {
    message: 'La recta elástica se apoya en pocos datos: {points}, cuando convienen {wanted}.',
    remedy: 'Registrar más rápido o cargar más despacio.',
  },
  'modulus-of-few-points': {
    message: 'La recta elástica se apoya en {points} datos, menos de los {least} que requiere un módulo: no se da E.',
    remedy: 'Registrar más rápido o cargar más despacio en el tramo elástico.',
  },
  'modulus-of-scatter': {
    message: 'La pendiente tiene un error típico relativo del {error} %, más que el {limit} % que admite un módulo: no se da E.',
    remedy: 'Reducir el ruido o registrar más datos en el tramo elástico; conviene un 1 % como máximo. Lo que se cuenta desde la recta, el origen y las tensiones con desplazamiento, es igual de dudoso.',
  },
  'sampling-slow-for-yield': {
    message: 'Con una frecuencia de muestreo de {frequency} por segundo y una velocidad de tensión de {rate} MPa/s, el límite superior de cedencia puede resultar bajo en hasta {loss} MPa.',
    remedy: 'Registrar más rápido o cargar más despacio en torno a la cedencia.',
  },
  'extension-goes-back': {
    message: 'Retrocesos del canal de {column}: {count}, de {largest} {unit} como máximo.',
    remedy: 'Lo causan el juego mecánico, una inversión del accionamiento o la descarga de la máquina; la recta y los cruces lo tienen en cuenta.',
  },
  'extensometer-taken-off': {
    message: 'El canal de {column} del extensómetro termina en el dato {sample}, con {reading} {unit}.',
    remedy: 'No hay que hacer nada; a partir de ahí la deformación tiene otra base.',
  },
  'extensometer-stands': {
    message: 'El canal de {column} del extensómetro queda quieto desde el dato {sample}, cerca de {reading} {unit}, mientras el ensayo continúa: se retiró o llegó a su tope, y solo cuenta hasta ahí.',
    remedy: 'Anotar cuándo se retira; a partir de ahí la deformación viene del desplazamiento del travesaño, o falta si no lo hay.',
  },
  'extensometer-falls-back': {
    message: 'El canal de {column} del extensómetro retrocede en el dato {sample}, desde {reading} {unit}, más de lo que puede la probeta, y se queda por debajo: se retiró, deslizó o se puso a cero, y solo cuenta hasta ahí.',
    remedy: 'No poner a cero durante el ensayo; a partir de ahí la deformación viene del desplazamiento del travesaño, o falta si no lo hay. Unir las partes (`joinJumps`) solo si fue eso lo que ocurrió.',
  },
  'travel-carries-on': {
    message: 'A partir de una deformación de {strain} la curva continúa con el desplazamiento del travesaño referido a {length} mm.',
    remedy: 'Desde el inicio de la estricción ambas bases difieren; las extensiones a partir de ahí son estimaciones.',
  },
  pause: {
    message: 'El travesaño estuvo parado {duration} s a una deformación de {strain}; la tensión pasó de {from} a {to} MPa.',
    remedy: 'Una bajada de la fuerza con el travesaño parado es relajación, nunca cedencia.',
  },
  'pauses-many': {
    message: 'El travesaño estuvo parado {count} veces, {total} s en total, del dato {first} al {last}; la pausa más larga dura {duration} s a una deformación de {strain}.',
    remedy: 'Las emboladas de una bomba de mano hacen pausas; pasar la fluencia en una sola embolada, o bombear con más regularidad.',
  },
  'pause-near-yield': {
    message: 'Pausas a menos de un 0,2 % de deformación de {symbol}: {count}, la más larga de {duration} s.',
    remedy: 'Cargar sin parar durante la cedencia; repetir el ensayo si este valor es decisivo.',
  },
  'uneven-loading': {
    message: 'La velocidad en la ventana elástica varía un {variation} % (desviación típica dividida por la media).',
    remedy: 'Cargar con emboladas o vueltas regulares; véase la figura de la velocidad en función del tiempo.',
  },
  // the test piece
  'gauge-length-not-proportional': {
    message: 'La longitud inicial entre marcas de {length} mm se aparta un {deviation} % de 5,65√S0 = {proportional} mm: A debe escribirse con un subíndice.',
    remedy: 'Escribir A con la longitud inicial entre marcas como subíndice (A80mm), con 11,3√S0 con el coeficiente (A11,3), o convertir según ISO 2566 dentro de sus límites.',
  },
  'parallel-length-assumed': {
    message: 'No se indicó la longitud calibrada; en su lugar se toma la longitud inicial entre marcas, {length} mm.',
    remedy: 'Indicar la longitud calibrada: toda la deformación plástica por desplazamiento se refiere a esa longitud.',
  },
  'parallel-length-short': {
    message: 'La longitud calibrada de {length} mm es menor que la mínima de {least} mm para esta sección y esta longitud inicial entre marcas.',
    remedy: 'Dar a la longitud calibrada al menos ese valor.',
  },
  'extensometer-length-unsuited': {
    message: 'Una base del extensómetro de {length} mm no está entre {least} y {most} mm, la mitad de la longitud inicial entre marcas y nueve décimos de la longitud calibrada.',
    remedy: 'Tomar una base dentro de ese intervalo; para las extensiones en la fuerza máxima y después, una cercana a la longitud inicial entre marcas.',
  },
  'section-small': {
    message: 'La dimensión de la sección ({dimension}) de {value} mm es menor que {limit} mm: se aplica otro anexo de la norma.',
    remedy: 'Seguir el anexo de productos delgados o de alambres.',
  },
  'section-wide': {
    message: 'La relación entre anchura y espesor es {ratio}, superior a 8.',
    remedy: 'En las probetas estrechas la estricción es más uniforme; indicar las dimensiones junto a A y Z.',
  },
  'section-spread': {
    message: 'Las lecturas de la sección se dispersan un {spread} % de su media.',
    remedy: 'Medir de nuevo; por encima del 0,5 % la probeta es irregular o lo son las lecturas.',
  },
  'section-taper': {
    message: 'La sección cambia un {taper} % de un extremo al otro.',
    remedy: 'Comprobar el mecanizado; la probeta rompe por su sección menor.',
  },
  'few-section-readings': {
    message: 'La sección se apoya en pocas lecturas de cada dimensión: {readings}.',
    remedy: 'Medir en tres lugares o más; las probetas redondas, en dos direcciones.',
  },
  'after-fracture-missing': {
    message: 'No se determinó {symbol}: no se indicó {missing}.',
    remedy: 'Juntar los trozos de la probeta rota y medir la longitud entre marcas; medir la zona de estricción en dos direcciones.',
  },
  'after-fracture-larger': {
    message: '{what} tras la rotura ({after}) no es compatible con el valor inicial ({before}).',
    remedy: 'Comprobar las lecturas: la longitud entre marcas aumenta y la sección disminuye.',
  },
  'reduction-unusual': {
    message: 'Z = {reduction} % es inusual junto a A = {elongation} %.',
    remedy: 'Comprobar las lecturas tras la rotura; solo los metales puros y el plomo se estrechan hasta desaparecer.',
  },
  'elongation-unlike-travel': {
    message: 'A = {elongation} % según las marcas y {travel} % según la curva no son compatibles.',
    remedy: 'Buscar una longitud equivocada, un deslizamiento en las mordazas o una unidad errónea.',
  },
  // the frame
  'extension-from-travel': {
    message: 'Las deformaciones se determinan a partir del desplazamiento del travesaño, y no con un extensómetro como piden las normas.',
    remedy: 'Indicarlo junto a cada valor basado en la deformación; emplear un extensómetro cuando el valor sea decisivo.',
  },
  'frame-compliance-removed': {
    message: 'Se descontó una flexibilidad de la máquina de {compliance} mm/N; suponía el {share} % del movimiento en el tramo elástico.',
    remedy: 'Indicar de dónde procede la flexibilidad, y su incertidumbre: si falta, la incertidumbre de E no la incluye.',
  },
  'frame-stretches-more-than-piece': {
    message: 'La máquina cede {ratio} veces lo que la probeta: E lleva al menos {ratio} veces la incertidumbre relativa de la flexibilidad. Si esta no se indica, la incertidumbre de E no la incluye.',
    remedy: 'Emplear un extensómetro para determinar E.',
  },
  'modulus-includes-frame-compliance': {
    message: 'Las deformaciones se determinan a partir del desplazamiento del travesaño, y no en la probeta como piden las normas: la pendiente de {slope} MPa es la de la máquina y la probeta juntas, y no se da E. Lo que cuenta una deformación total (en tracción: Agt, At) contiene también la flexibilidad de la máquina; lo que cuenta una deformación plástica, no.',
    remedy: 'Indicar la flexibilidad de la máquina, o emplear un extensómetro; nombrar el travesaño junto a cada valor basado en la deformación. Una tensión con desplazamiento desde la propia pendiente de la curva sigue siendo correcta.',
  },
  'compliance-too-large': {
    message: 'La flexibilidad indicada de la máquina, {compliance} mm/N, es el {share} % del movimiento que muestra el recorrido: no queda nada para la probeta. No se restó; lo que se basa en el recorrido es de la máquina y la probeta juntas.',
    remedy: 'Indicarla en mm/N (20 µm/kN son 2e-5 mm/N), o medirla de nuevo con las mordazas del ensayo.',
  },
  'compliance-vanishing': {
    message: 'La flexibilidad indicada de la máquina, {compliance} mm/N, solo quita el {share} % del movimiento en la parte elástica: la pendiente es la de la máquina y la probeta juntas, y no se da E.',
    remedy: 'Indicarla en mm/N (20 µm/kN son 2e-5 mm/N), o medirla con las mordazas del ensayo.',
  },
  'displacement-steps-coarse': {
    message: 'Un paso de la lectura de desplazamiento es el {share} % de la extensión prescrita para {symbol}.',
    remedy: 'Emplear un sensor de desplazamiento más fino: conviene una décima parte de la extensión prescrita.',
  },
  // the evaluation
  'window-bound-eased': {
    message: 'Ninguna ventana elástica cumple todos sus límites ({why}); se relajó un requisito: {bound}.',
    remedy: 'Si los datos son pocos, registrar más rápido en el tramo elástico; si no, pedir fracciones menores o elegir la ventana manualmente.',
  },
  'no-linear-part': {
    message: 'No se reconoce ningún tramo recto en la curva ({why}). No se da E, y lo que se apoya en la recta es dudoso: {symbols}.',
    remedy: 'Tomar E de una recta de descarga o de otro método. Donde la curva está doblada, su recta es demasiado plana y un límite por desplazamiento demasiado alto: dar una tensión a una extensión total y leer las extensiones como estimaciones. Si es el ruido lo que separa las ventanas, registrar con más calma.',
  },
  'window-not-linear': {
    message: 'La ventana indicada no es un tramo recto ({why}), sea como sea el resto de la curva. No se da E, y lo que se apoya en su recta es dudoso: {symbols}.',
    remedy: 'Indicar otra ventana, o dejar su elección a la búsqueda.',
  },
  'linear-part-unknown': {
    message: 'No se sabe si la recta elástica se apoya en un tramo recto: sus {points} datos, con {strains} deformaciones distintas, no muestran curvatura alguna, y no hay otra ventana con que comparar. No se da E.',
    remedy: 'Registrar en el tramo elástico más datos y deformaciones más finas.',
  },
  'slope-over-slip': {
    message: 'El extensómetro deslizó dentro de la ventana elástica (en el dato {sample}): unida allí, la recta tendría {joined} MPa, así que el deslizamiento cambia su pendiente un {change} %; no se da E.',
    remedy: 'Unir los tramos (`joinJumps`) o indicar una ventana sin el deslizamiento; las tensiones con desplazamiento desde esta recta llevan el mismo error.',
  },
  'slope-above-others': {
    message: 'La pendiente, {slope} MPa, supera las de todas las demás ventanas, de {lowest} a {highest} MPa, más de lo que explica el ruido: o una cuchilla retrocedió poco a poco dentro de la ventana, y es demasiado alta, o la probeta se enderezó por debajo, y las demás son demasiado bajas. La incertidumbre de E abarca ambas cosas ({share} %).',
    remedy: 'Mirar el detalle elástico; montar de nuevo el extensómetro y repetir, o indicar una ventana sin ese retroceso. Captadores a ambos lados revelan una probeta doblada.',
  },
  'slope-scatter': {
    message: 'La pendiente tiene un error típico relativo del {error} %.',
    remedy: 'Reducir el ruido o registrar más datos; conviene no pasar del 1 %.',
  },
  'strain-noise-flattens': {
    message: 'El ruido de la deformación ({noise}) hace la recta elástica demasiado plana, en torno a un {share} %; la pendiente se deja como está y su incertidumbre lo recoge.',
    remedy: 'Calmar el extensómetro o su señal, o indicar una ventana más larga: el efecto va con el cuadrado del ruido entre la ventana.',
  },
  'strain-steps-open': {
    message: 'La recta elástica sube a lo largo de {steps} pasos de la lectura de deformación (uno es {step}): dejan su pendiente abierta en un {share} %, lo que recoge su incertidumbre.',
    remedy: 'Leer la deformación en pasos más finos, o indicar una ventana más larga: el triple de pasos deja abierta una quinta parte.',
  },
  'strain-steps-few': {
    message: 'La recta elástica sube a lo largo de {steps} pasos de la lectura de deformación (uno es {step}): dejan su pendiente abierta en un {share} %, más que el {limit} % hasta el que se da E. No se da E.',
    remedy: 'Leer la deformación en pasos más finos; las tensiones con desplazamiento desde esta recta llevan la misma duda.',
  },
  'windows-disagree': {
    message: 'La recta elástica, {slope} MPa, es frágil: otras ventanas ({windows}) dan pendientes de {lowest} a {highest} MPa y tensiones con el desplazamiento del 0,2 % de {low} a {high} MPa; la duda de la pendiente mueve este desplazamiento un {share} %.',
    remedy: 'Examinar el detalle del tramo elástico; dar el intervalo, o indicar la ventana. Donde la curva está doblada, todas estas pendientes son demasiado bajas: los intervalos no encierran el valor verdadero.',
  },
  'window-slopes-disagree': {
    message: 'La recta elástica, {slope} MPa, es frágil: otras ventanas ({windows}) dan pendientes de {lowest} a {highest} MPa.',
    remedy: 'Examinar el detalle del tramo elástico; dar el intervalo, o indicar la ventana. Donde la curva está doblada, todas estas pendientes son demasiado bajas: los intervalos no encierran el valor verdadero.',
  },
  'windows-fall': {
    message: 'La recta elástica, {slope} MPa, es frágil: otras ventanas ({windows}) dan pendientes de hasta {highest} MPa, y algunas son negativas, pues su deformación retrocede mientras la tensión sube.',
    remedy: 'Examinar el detalle del tramo elástico y el movimiento: su ruido, sus pasos, o una flexibilidad que resta más de lo que hay.',
  },
  'residuals-alike': {
    message: 'Los residuos vecinos de la recta elástica se parecen (rachas: {runs}; esperadas en residuos aleatorios: {expected}): su error típico es demasiado pequeño.',
    remedy: 'Un filtro o la frecuencia del registrador correlaciona los datos, o la ventana es curva; leer el error típico como límite inferior.',
  },
  'window-bent': {
    message: 'Una parábola ajustada en la ventana elástica cambia su pendiente un {change} % de un extremo al otro.',
    remedy: 'Examinar el detalle del tramo elástico: el pie de la curva o la cedencia entra en la ventana.',
  },
  'slope-implausible': {
    message: 'Un módulo de {slope} MPa está fuera del intervalo de {lowest} a {highest} MPa propio de los metales.',
    remedy: 'Comprobar las unidades, el área (¿radio en lugar de diámetro?), la longitud y la flexibilidad de la máquina.',
  },
  'offset-leverage': {
    message: 'Con un efecto de palanca de {leverage}, la duda de la pendiente mueve la extensión prescrita de {symbol} un {share} %, y deja la tensión entre {low} y {high} MPa.',
    remedy: 'Emplear un extensómetro o un registro más estable: la pendiente decide este valor.',
  },
  'toe-long': {
    message: 'El pie de la curva ocupa una deformación de {shift}, el {share} % de la deformación elástica en lo alto de la ventana.',
    remedy: 'Aplicar una precarga para asentar las mordazas; el origen se trasladó al punto en que la recta corta la tensión cero.',
  },
  'toe-outside-record': {
    message: 'La recta corta la tensión cero a una deformación de {shift}, antes de que empiece el registro.',
    remedy: 'El registro empieza tarde o con más pendiente que la recta; comprobar el cero y la precarga.',
  },
  'no-yield-point': {
    message: 'No hay límite superior de cedencia: {why}.',
    remedy: 'Dar el límite elástico convencional.',
  },
  'yield-fall-in-pause': {
    message: 'La tensión solo bajó mientras el travesaño estaba parado: eso es relajación, no cedencia.',
    remedy: 'Cargar sin parar durante la cedencia.',
  },
  'ends-before-hardening': {
    message: 'El ensayo terminó en el escalón de cedencia, antes del endurecimiento: ReL, {lower} MPa, es la tensión más baja hasta entonces, y Rm, que la ISO 6892-1 no define allí, al menos la tensión más alta del escalón, no ReH, {upper} MPa; Ae, Ag y Agt no se dan.',
    remedy: 'Dar ReL como valor anterior al endurecimiento; seguir hasta la fuerza máxima para Rm, Ae y Agt.',
  },
  'no-hardening': {
    message: 'Ningún endurecimiento sigue al escalón de cedencia, en el que ReL es {lower} MPa: la ISO 6892-1 no define allí ningún Rm. En su lugar está la tensión más alta del escalón, no ReH, {upper} MPa; Ae, Ag y Agt no se dan.',
    remedy: 'Dar ReH y ReL; si se pide una resistencia, acordar qué la sustituye.',
  },
  'lower-yield-in-dips': {
    message: 'ReL, {lowest} MPa, está en una de {count} caídas breves de la fuerza durante la cedencia, de las que esta volvió cada vez; el ruido del desplazamiento oculta si son emboladas del accionamiento o del metal: sin ellas ReL es {level} MPa.',
    remedy: 'Decirlo con ReL y Ae; pasar la cedencia en una sola embolada, o registrar un desplazamiento que muestre si el accionamiento retrocede.',
  },
  'falls-slip-or-yield': {
    message: 'Caídas súbitas de la fuerza durante la cedencia ({count} en total), de las que volvió por la recta elástica, con {way} mm más de desplazamiento del travesaño en conjunto: deslizamientos en las mordazas o cedencia súbita del metal, que ese desplazamiento no distingue. Con estas caídas ReL es {lowest} MPa, sin ellas {level} MPa. Ae no se da: {least} si son deslizamientos, {most} si es el metal.',
    remedy: 'Buscar marcas de las mordazas en las cabezas: si la probeta deslizó, quitar los deslizamientos (`repairs.slips`); si no, ReL vale. Las deformaciones por desplazamiento posteriores a las caídas pueden contener ese recorrido. Un extensómetro sobre la longitud calibrada lo muestra.',
  },
  'few-points-before-proof': {
    message: 'Entre el final de la ventana elástica y {symbol} hay pocos datos: {points}.',
    remedy: 'Registrar más rápido: entre datos distantes la cuerda pasa por debajo de la curva.',
  },
  'several-crossings': {
    message: 'La curva corta la recta de {symbol} {count} veces; cuenta el primer corte duradero.',
    remedy: 'Examinar el detalle del tramo elástico; si hay cedencia manifiesta, dar primero ReH y ReL.',
  },
  'proof-strength-not-reached': {
    message: 'No se alcanzó {symbol} antes de la fuerza máxima: material frágil, o ensayo parado antes de tiempo.',
    remedy: 'Dar solo la resistencia.',
  },
  'total-extension-not-reached': {
    message: 'No se alcanzó {symbol} en el registro.',
    remedy: 'No incluirlo en el informe.',
  },
  'maximum-wide': {
    message: 'La fuerza se mantiene a menos de un {share} % de su máximo a lo largo de una deformación de {width}; el ruido, los escalones de lectura y las incertidumbres dadas dejan a Agt una incertidumbre típica de {uncertainty}.',
    remedy: 'Dar Agt con su incertidumbre típica; una deriva de la fuerza u otro ritmo en ese tramo lo desplaza dentro de esa anchura.',
  },
  'maximum-below-upper-yield': {
    message: 'El máximo tras el inicio del endurecimiento, {strength} MPa, es menor que el límite superior de cedencia, {upper} MPa.',
    remedy: 'Indicar cuál de los dos se entiende por resistencia.',
  },
  'proportional-limit-by-definition': {
    message: 'El límite de proporcionalidad va de {lowest} a {highest} MPa, según la definición.',
    remedy: 'Citar la definición junto al valor.',
  },
  'stress-rate-outside': {
    message: 'Según las velocidades locales, el {share} % de la ventana elástica se cargó entre {lowest} y {highest} MPa/s (ISO 6892-1, método B), cuando se pide un 90 %; la mediana de la velocidad de tensión es de {rate} MPa/s.',
    remedy: 'Cargar a una velocidad comprendida en el intervalo; véase la figura de la velocidad en función del tiempo.',
  },
  'mean-stress-rate-outside': {
    message: 'La velocidad de tensión en la ventana elástica es de {rate} MPa/s, fuera de {lowest} a {highest} MPa/s (ISO 6892-1, método B); la ventana contiene demasiado pocos datos para dar sus velocidades locales.',
    remedy: 'Cargar a una velocidad comprendida en el intervalo, y registrar más rápido.',
  },
  'strain-rate-high': {
    message: 'La velocidad de deformación {where} es de {rate} 1/s, superior a {highest} 1/s (ISO 6892-1).',
    remedy: 'Cargar ahí más despacio; una velocidad alta eleva los valores de cedencia.',
  },
  'strain-rate-low': {
    message: 'Según las velocidades locales, el {share} % de la cedencia transcurrió a {lowest} 1/s o más (ISO 6892-1, método B, para ReL), cuando se pide un 90 %; la velocidad de deformación media es de {rate} 1/s.',
    remedy: 'Cargar más deprisa durante la cedencia; una velocidad baja reduce ReL.',
  },
  'hardening-correlation-low': {
    message: 'La ley de endurecimiento se ajusta solo con R² = {correlation}.',
    remedy: 'Puede que otra ley se ajuste mejor; examinar la curva verdadera.',
  },
  'necking-answers-differ': {
    message: 'La estricción empieza a una deformación verdadera de {curve} (u = {uncertainty}) según la curva, y de {law} según la ley de endurecimiento.',
    remedy: 'Puede que otra ley siga mejor esta curva; comparar leyes antes de extrapolar.',
  },
  'necking-unlike-exponent': {
    message: 'El exponente n = {exponent} y la deformación uniforme verdadera {strain} no concuerdan como exige el criterio de Considère.',
    remedy: 'La ley no es válida hasta la estricción; indicar junto a n el intervalo del ajuste.',
  },
  'withheld-after-slip': {
    message: 'Retenidos: {symbols}; la probeta deslizó antes en las mordazas, en el dato {sample}, y la deformación contendría hasta {strain} de deslizamiento.',
    remedy: 'Quitar el deslizamiento antes de la evaluación (`repairs.slips`) o ensayar con un extensómetro.',
  },
  'extensions-hold-slip': {
    message: '{symbols}: la deformación contiene lo que la probeta deslizó en las mordazas en el dato {sample}; los valores son demasiado grandes en hasta {strain} de deformación.',
    remedy: 'Quitar el deslizamiento antes de la evaluación (`repairs.slips`) o medir el alargamiento en la probeta rota.',
  },
  'not-determined': {
    message: 'Sin determinar: {symbol}; motivo: {why}.',
    remedy: 'Véase el motivo: con lo que se pide, este registro no permite dar el valor.',
  },
  // the material
  'dimension-looks-wrong': {
    message: '{symbol} = {value} {unit} está fuera del intervalo de {low} a {high} {unit} habitual para {family}. {why}',
    remedy: 'Medir de nuevo la probeta, compararla con lo introducido y evaluar otra vez; no se corrigió nada.',
  },
  'unit-looks-wrong': {
    message: '{symbol} = {value} {unit} está fuera del intervalo de {low} a {high} {unit} habitual para {family}. {why}',
    remedy: 'Indicar las unidades de las columnas al leer el archivo y evaluar otra vez; no se corrigió nada.',
  },
  'strain-looks-wrong': {
    message: '{symbol} = {value} {unit} está fuera del intervalo de {low} a {high} {unit} habitual para {family}. {why}',
    remedy: 'Comprobar qué contiene la deformación además de la probeta: máquina, mordazas, asiento del extensómetro.',
  },
  'unlike-family': {
    message: '{symbol} = {value} {unit} está fuera del intervalo de {low} a {high} {unit} habitual para {family}. {why}',
    remedy: 'Comprobar el material y su estado. Los intervalos habituales no son límites de una especificación.',
  },
  'properties-contradict': {
    message: '{left} = {leftValue} {leftUnit} y {right} = {rightValue} {rightUnit} se contradicen: {rule}.',
    remedy: 'Revisar cómo se obtuvieron ambos; al menos uno de ellos, o una lectura en la que se basa, es erróneo.',
  },
  // verification of the frame
  'force-class-not-reached': {
    message: 'Escalones que no alcanzan la clase 1: {count} de {steps}; el primero, a {force} N (término limitante: {term}).',
    remedy: 'No declarar ahí conformidad con ISO 6892-1 para las fuerzas; buscar la causa, ajustar y verificar de nuevo.',
  },
  'rising-force-only': {
    message: 'La reversibilidad del {reversibility} % excede la de la clase 1: el canal solo sirve para fuerzas crecientes.',
    remedy: 'No tomar de este canal ningún módulo de descarga ni ciclo de histéresis; examinar juntas y rozamiento.',
  },
  'falling-above-rising': {
    message: 'A {force} N, la serie de fuerzas decrecientes indica {excess} N más que la de crecientes; el rozamiento de un cilindro hace lo contrario.',
    remedy: 'Comprobar si se intercambiaron las series, si el patrón tuvo deriva, y si el sensor o el patrón tienen histéresis propia.',
  },
  'zero-not-verified': {
    message: 'No se indicaron lecturas de cero: el error de cero es desconocido y la clase se basa solo en los demás términos.',
    remedy: 'Leer el indicador sin fuerza después de cada serie.',
  },
  'displacement-steps-few': {
    message: 'Desplazamientos verificados: {steps}; menor número de lecturas desde abajo en uno de ellos: {runs}. Se esperan diez desplazamientos en dos series.',
    remedy: 'Verificar en unos diez desplazamientos sobre el intervalo que se usa, dos veces cada uno.',
  },
  'verification-steps-few': {
    message: 'Escalones entre el 20 % y el 100 % del alcance: {count}; convienen cinco.',
    remedy: 'Verificar aproximadamente al 20, 40, 60, 80 y 100 % del alcance y, por debajo del 20 %, al 10, 5, 2 y 1 % donde se utilicen fuerzas.',
  },
  'range-not-reached': {
    message: 'El escalón más alto es de {force} N, el {share} % del alcance; por encima no hay nada verificado.',
    remedy: 'Verificar hasta el final del alcance, o declarar el escalón más alto como su final.',
  },
  'class-range-starts-high': {
    message: 'La clase 1 solo se cumple a partir de {force} N, el {share} % del alcance; por debajo la impide un término: {term}.',
    remedy: 'Planificar los ensayos de modo que la cedencia quede por encima de esta fuerza.',
  },
  'friction-negative': {
    message: 'Escalones en los que el rozamiento resulta menor que cero: {count}; el más bajo, {friction} N; el rozamiento nunca ayuda.',
    remedy: 'Comprobar si se intercambiaron las series creciente y decreciente, y si hubo deriva del cero de la presión.',
  },
  'pointer-above-record': {
    message: 'La aguja indica {pointer} N, el registro {recorded} N: un {share} % más. {cause}.',
    remedy: 'Dar en el informe el canal verificado y al lado el otro; examinar el registro en torno a su máximo.',
  },
  'pointer-below-record': {
    message: 'La aguja indica {pointer} N, el registro {recorded} N: un {share} % menos. {cause}.',
    remedy: 'Dar en el informe el canal verificado y al lado el otro; comprobar que la aguja se mueva libremente en toda su escala.',
  },
  'idle-friction-changed': {
    message: 'La carrera en vacío requiere {force} N; antes requería {before} N, un cambio del {share} %.',
    remedy: 'Examinar juntas, guías y aceite; la tara de la fuerza ya no es la que era.',
  },
  'idle-friction-uneven': {
    message: 'A lo largo de la carrera en vacío el rozamiento varía {spread} N en torno a {force} N.',
    remedy: 'Buscar un cilindro rayado, un vástago doblado o aire en el aceite; a `pressureToForce` se le puede dar una tara en función del desplazamiento.',
  },
  'leak-down-fast': {
    message: 'En reposo la fuerza baja un {share} % por minuto.',
    remedy: 'Buscar una válvula, una junta o un racor con fuga antes de hacer ensayos con tiempos de mantenimiento.',
  },
  'leak-down-settles': {
    message: 'La presión bajó {early} MPa por minuto en la primera mitad y {late} MPa en la segunda: el aceite, la manguera o la pieza aún se estaban asentando.',
    remedy: 'Esperar antes de leer la fuga, o leer solo la segunda mitad (`from`).',
  },
  'check-out-of-limits': {
    message: 'El control {index} indica {value}, fuera de los límites de {lower} a {upper}.',
    remedy: 'Repetir el control una vez; si sigue fuera, dejar de ensayar y buscar la causa antes de emitir resultados.',
  },
  'check-jumped': {
    message: 'Entre los controles {before} y {index} la lectura cambió {range}, más de {limit}.',
    remedy: 'Buscar qué cambió entre los dos: operador, pieza, aceite, sensor.',
  },
  'check-on-one-side': {
    message: '{count} controles seguidos, hasta el número {index}, quedan {side} del centro.',
    remedy: 'El nivel se ha movido: buscar la causa, y verificar la fuerza si no se encuentra ninguna.',
  },
  'check-trend': {
    message: '{count} controles seguidos, hasta el número {index}, siguen una tendencia {direction}.',
    remedy: 'Hay una deriva: verificar la fuerza antes de que se alcancen los límites.',
  },
  'check-few': {
    message: 'Los límites se apoyan en pocos controles: {count}; con menos de 20 son provisionales.',
    remedy: 'Seguir controlando a intervalos regulares y fijar los límites a partir de unos 20.',
  },
  'force-drifted': {
    message: 'En el estado en que se encontró, el error llega al {error} % a {force} N (era del {before} % en el estado en que se dejó el {date}); resultados posteriores afectados: {count}.',
    remedy: 'Se desconoce cuándo ocurrió: revisar cada uno de ellos y avisar a quien los utilice.',
  },
  'force-outside-certificate': {
    message: 'El resultado {identity}, a {force} N, está fuera de las fuerzas comprobadas (de {low} a {high} N).',
    remedy: 'Juzgarlo por separado; la deriva en ese punto se desconoce.',
  },
  'displacement-class-not-reached': {
    message: 'Escalones que no alcanzan la clase 1: {count} de {steps}; el primero, a {travel} mm (término limitante: {term}).',
    remedy: 'Usar el canal para lo que permite: indicar su clase junto a cada deformación, y tomar Rp de un sensor más fino.',
  },
  'displacement-reversal': {
    message: 'Las lecturas crecientes y decrecientes difieren hasta {difference} mm, a {travel} mm: hay juego o rozamiento en el sensor.',
    remedy: 'Aproximarse a cada posición por el mismo lado; no incluir inversiones en los ciclos de deformación.',
  },
  'gauges-disagree': {
    message: 'Las cuatro bandas extensométricas se apartan de un plano un {share} % de la deformación media.',
    remedy: 'Comprobar el cableado, el factor y el lugar de cada banda antes de dar por buena la flexión.',
  },
  'bending-large': {
    message: 'La flexión es el {bending} % de la deformación media: la superficie cede al {share} % de la tensión media que exige una tracción centrada.',
    remedy: 'Alinear las mordazas y la probeta, emplear asientos esféricos y enderezar con una pequeña precarga; ReH y el límite de proporcionalidad resultan demasiado bajos.',
  },
  'compliance-runs-differ': {
    message: 'Las series difieren: en la fuerza más alta sus flexibilidades se dispersan un {share} % de la media, más de lo que explica su propia dispersión.',
    remedy: 'Las mordazas, el sentido o el rozamiento cambiaron entre series; medir de nuevo, y dar una flexibilidad a las fuerzas crecientes y otra a las decrecientes.',
  },
  'compliance-curved': {
    message: 'Un único número no describe esta máquina: su movimiento sigue la potencia {exponent} de la fuerza; a un quinto de la fuerza más alta es un {share} % mayor que el proporcional.',
    remedy: 'Tomar una tabla o una ley potencial, o medir entre las fuerzas que se utilizan.',
  },
  'compliance-poorly-determined': {
    message: 'La incertidumbre típica de la flexibilidad es el {uncertainty} % de esta.',
    remedy: 'Emplear un bloque más rígido o una mayor diferencia de longitudes, más datos, y un intervalo que llegue hasta las fuerzas de los ensayos.',
  },
  'force-beyond-compliance': {
    message: 'Datos por encima de {limit} N, donde no se midió la flexibilidad de la máquina: {count}; se prolongó hasta {force} N como en su extremo.',
    remedy: 'Medir la flexibilidad hasta las fuerzas de los ensayos.',
  },
  'window-below-compliance': {
    message: 'La ventana elástica empieza a {force} N, por debajo de {limit} N, donde no se midió la flexibilidad de la máquina.',
    remedy: 'Las máquinas son menos rígidas a fuerzas bajas: medir la flexibilidad desde ahí, o situar la ventana por encima.',
  },
  'modulus-carries-compliance': {
    message: 'Por sí sola, la flexibilidad de la máquina da a E una incertidumbre típica del {uncertainty} %.',
    remedy: 'Emplear un extensómetro, una probeta más larga o más delgada, o medir mejor la flexibilidad.',
  },
  // compression and bending
  'signs-turned': {
    message: 'La carga se registró como negativa en: {columns}; se invirtieron los signos, de modo que cuenta como positiva.',
    remedy: 'No hay que hacer nada; las columnas mismas no se modificaron.',
  },
  'piece-squat': {
    message: 'La relación entre altura y diámetro es {ratio}, inferior a {least}: el rozamiento en los extremos está presente en todas las tensiones.',
    remedy: 'Usar una probeta de 0,8 a 2 diámetros para metales antifricción, de 3 para uso general (ASTM E9).',
  },
  'piece-slender': {
    message: 'La relación entre altura y diámetro es {ratio}, superior a {most}: más de lo que se fabrica para ensayos de compresión.',
    remedy: 'Usar una probeta de 8 a 10 diámetros solo para el módulo, de 3 para las resistencias (ASTM E9).',
  },
  'buckling-near': {
    message: 'Con una relación entre altura y diámetro de {ratio}, la relación entre la fuerza y la carga de pandeo por módulo tangente llegó a {share}, a una deformación de {strain}.',
    remedy: 'Usar una probeta más corta, o tomar de esta solo lo que queda por debajo de la mitad de esa carga.',
  },
  buckled: {
    message: 'A una deformación de {strain} ({stress} MPa), la fuerza superó la carga de pandeo por módulo tangente de una probeta recta con un factor de extremos {endFactor}: a partir de ahí la probeta flexiona.',
    remedy: 'No deben usarse los valores posteriores a esa deformación; una probeta que pandea puede salir despedida hacia un lado. Usar una probeta más corta.',
  },
  barrelled: {
    message: 'El centro es {ratio} veces tan ancho como los extremos: las tensiones a grandes deformaciones contienen rozamiento.',
    remedy: 'Lubricar mejor, o cargar por escalones y lubricar de nuevo; dar las tensiones a pequeñas deformaciones.',
  },
  'ends-wider-than-middle': {
    message: 'Los extremos son más anchos que el centro, que mide {ratio} veces su ancho: comprimida entre platos, una probeta se abomba.',
    remedy: 'Ver si los dos diámetros están intercambiados; una bolsa de lubricante que ensanche los extremos es rara.',
  },
  'volume-not-kept': {
    message: 'Según los diámetros después del ensayo, la probeta tiene {ratio} veces su volumen inicial.',
    remedy: 'Comprobar los diámetros, las alturas y sus unidades: la compresión plástica conserva el volumen.',
  },
  'barrelling-not-measured': {
    message: 'La deformación llegó a {strain}, y no se indicaron los diámetros después del ensayo: se desconoce el abarrilamiento.',
    remedy: 'Medir el diámetro en el centro y en los extremos después del ensayo.',
  },
  'height-unlike-record': {
    message: 'Según el registro, la probeta perdió {recorded} mm de altura de forma permanente; según la medición, {measured} mm.',
    remedy: 'Comprobar la flexibilidad de la máquina, la altura y el cero del desplazamiento.',
  },
  'end-friction-not-removed': {
    message: 'No se indicó ningún coeficiente de rozamiento: la curva de tensión de flujo contiene el rozamiento de los extremos.',
    remedy: 'Indicar el rozamiento del lubricante, o ensayar dos alturas y extrapolar.',
  },
  'end-friction-removed': {
    message: 'Se descontó de la tensión de flujo un rozamiento de {friction} según Siebel: el {share} % a la deformación mayor.',
    remedy: 'Indicar el rozamiento y de dónde procede; su duda se transmite a la tensión de flujo.',
  },
  'compressive-strength-without-strain': {
    message: 'La probeta no rompió: un metal dúctil no tiene resistencia a la compresión, solo tensiones a deformaciones dadas.',
    remedy: 'Dar el límite elástico, y tensiones con sus deformaciones.',
  },
  'span-short': {
    message: 'La relación entre distancia entre apoyos y altura es {ratio}, inferior a {least}: el cortante añade un {share} % a la flecha, y el módulo resulta demasiado bajo en la misma medida.',
    remedy: 'Usar una distancia entre apoyos mayor (16 veces la altura), o indicar junto al módulo la parte debida al cortante.',
  },
  'large-deflection': {
    message: 'A partir de una tensión de {stress} MPa la flecha supera el {share} % de la distancia entre apoyos: dejan de valer las fórmulas de pequeñas flechas, y crece el rozamiento en los apoyos.',
    remedy: 'No tomar ninguna tensión ni deformación a partir de ahí, o usar una distancia entre apoyos menor.',
  },
  'flexural-stress-nominal': {
    message: 'Más allá de la cedencia, la tensión de flexión es nominal: en esta sección sobrestima la tensión de la fibra extrema hasta en {factor} veces.',
    remedy: 'Comparar solo con otros ensayos de flexión sobre la misma sección, no con la tracción.',
  },
  'indentation-not-removed': {
    message: 'No se indicó la penetración en los apoyos y los rodillos de carga, y sigue incluida en la flecha.',
    remedy: 'Medirla con la probeta sobre una placa plana, o indicar 0 si la flexibilidad de la máquina ya la contiene.',
  },
  'chord-unlike-slope': {
    message: 'La cuerda da {chord} MPa; el tramo más recto, {slope} MPa.',
    remedy: 'Examinar la curva: entre las deformaciones de la cuerda hay holgura o cedencia; en un metal, tomar la pendiente.',
  },
  // shear, Brinell hardness, cupping, unloading, the broken piece
  'shear-clearance': {
    message: 'Una holgura de {clearance} mm es el {share} % de los {dimension} mm que se cizallan: flexión y tracción se mezclan con la cizalladura.',
    remedy: 'Usar herramientas bien ajustadas y afiladas; indicar la holgura junto al valor.',
  },
  'shear-bending': {
    message: 'La probeta se dobló: su resistencia a la cizalladura no es la de una cizalladura pura.',
    remedy: 'Apoyar la probeta hasta el plano de corte, usar una herramienta más ajustada y repetir el ensayo.',
  },
  'shear-ratio-unusual': {
    message: 'La resistencia a la cizalladura es {ratio} veces la resistencia a la tracción; para {family} lo habitual es de {least} a {most}.',
    remedy: 'Comprobar el área, el número de planos de corte y la resistencia a la tracción indicada.',
  },
  'no-shear-modulus': {
    message: 'No se deduce ningún módulo de cizalladura: además de la cizalladura, el desplazamiento contiene flexión, penetración y la herramienta.',
    remedy: 'El módulo de cizalladura se obtiene con un ensayo de torsión.',
  },
  'brinell-indentation-outside': {
    message: 'Huella {number}: su diámetro es {ratio} veces el de la bola, fuera de 0,24 a 0,60; no cuenta.',
    remedy: 'Tomar otra fuerza para esta bola: un coeficiente menor para un metal blando, uno mayor para un metal duro.',
  },
  'brinell-diameters-differ': {
    message: 'Huella {number}: sus dos diámetros difieren un {share} %.',
    remedy: 'Buscar una superficie inclinada o una dirección del grano; por encima del 1 %, indicarlo junto al valor (práctica habitual).',
  },
  'brinell-one-diameter': {
    message: 'Huella {number}: se leyó un solo diámetro.',
    remedy: 'Leer dos perpendiculares; un uno por ciento del diámetro es un dos por ciento de la dureza.',
  },
  'brinell-force-not-nominal': {
    message: 'Huella {number}: la fuerza de {force} N se aparta un {share} % de {nominal} N, la fuerza de {designation}; se admite un 1 %.',
    remedy: 'Llevar la fuerza a su valor nominal con una tolerancia del 1 %; la dureza se calculó con la fuerza real.',
  },
  'brinell-force-in-kgf': { message: 'Huella {number}: la fuerza {force} N es el número de {designation} en kgf, que son {nominal} N.', remedy: 'Dar la fuerza en newtons: la dureza se calculó con el número tal como se dio.' },
  'brinell-indentation-off-scale': { message: 'La huella {number} no cuenta en la media: su fuerza se aparta un {share} % de la de {designation}, que otras cumplen dentro del 1 %.', remedy: 'Repetir la huella con la fuerza de la escala.' },
  'brinell-index-unusual': {
    message: 'Huella {number}: una bola de {ball} mm con {force} N (coeficiente fuerza-diámetro {index}) no es un par de la norma.',
    remedy: 'Tomar una bola de 1; 2,5; 5 o 10 mm y una fuerza que la norma tenga para ella; los valores de otros pares no son comparables.',
  },
  'brinell-too-hard': {
    message: '{hardness} HBW está por encima de 650 HBW, donde termina la escala: cede la propia bola.',
    remedy: 'Tomar otro ensayo de dureza, como Vickers o Rockwell C.',
  },
  'brinell-ball-unsuited': {
    message: 'Una bola de {ball} mm es demasiado pequeña para {material}; la menor es de {least} mm.',
    remedy: 'Repetir con una bola mayor: la huella debe abarcar muchos granos.',
  },
  'brinell-index-unsuited': {
    message: 'El coeficiente fuerza-diámetro {index} no es adecuado para {material} con {hardness} HBW (habitual: {usual}).',
    remedy: 'Repetir con una fuerza de un coeficiente habitual.',
  },
  'brinell-force-unsteady': {
    message: 'Huella {number}: la fuerza cambió un {share} % mientras se mantenía; cuenta la más alta, {force} N.',
    remedy: 'Mantener la fuerza dentro del 1 %: corregirla suavemente, sin sobrepasarla nunca.',
  },
  'brinell-dwell-outside': {
    message: 'Huella {number}: la fuerza se mantuvo {duration} s, y no de 10 a 15 s.',
    remedy: 'Mantenerla de 10 a 15 s, o indicar el tiempo: los metales blandos presentan fluencia.',
  },
  'brinell-rise-outside': {
    message: 'Huella {number}: la fuerza subió en {duration} s, y no en 2 a 8 s.',
    remedy: 'Aplicar la fuerza en 2 a 8 s, sin golpe.',
  },
  'brinell-dwell-not-found': {
    message: 'Huella {number}: en el registro no se distingue ningún tramo de fuerza mantenida.',
    remedy: 'Registrar desde antes de la subida hasta después de la descarga.',
  },
  'brinell-piece-thin': {
    message: 'La probeta tiene {thickness} mm de espesor, menos de 8 veces la profundidad de la huella ({least} mm).',
    remedy: 'Tomar una bola y una fuerza menores; la cara opuesta no debe mostrar ninguna marca.',
  },
  'brinell-near-edge': {
    message: 'La huella {number} está a {distance} mm del borde, menos de 2,5 veces su diámetro ({least} mm).',
    remedy: 'Ensayar más lejos del borde.',
  },
  'brinell-near-neighbour': {
    message: 'La huella {number} está a {distance} mm de la más cercana, menos de 3 veces su diámetro ({least} mm).',
    remedy: 'Ensayar más lejos de otras huellas: el metal está allí endurecido por deformación.',
  },
  'strength-estimated': {
    message: 'Una resistencia a la tracción de {strength} MPa es una estimación a partir de la dureza, válida con un 10 % aproximadamente.',
    remedy: 'No aceptar nunca una pieza por ella: hacer un ensayo de tracción cuando la resistencia sea decisiva.',
  },
  'strength-not-estimated': {
    message: 'No se estima ninguna resistencia a la tracción: {why}.',
    remedy: 'Hacer un ensayo de tracción.',
  },
  'cupping-crack-not-recorded': {
    message: 'Probeta {number}: la fuerza no baja un {share} % después de su máximo; no hay ninguna fisura en el registro, y no se da la profundidad.',
    remedy: 'Cargar hasta que la fisura atraviese la chapa, y seguir registrando después.',
  },
  'cupping-fall-gradual': {
    message: 'Probeta {number}: la fuerza baja de forma gradual, a lo largo de {depth} mm; el momento de la fisura es incierto en esa medida.',
    remedy: 'Observar la copa en un espejo o con una cámara, a través del resguardo cerrado y nunca desde la línea de carga, y parar cuando pase la luz; cargar más despacio cerca del máximo.',
  },
  'cupping-contact-uncertain': {
    message: 'Chapa {number}: la fuerza sube poco a poco; la bola toca en algún punto entre {earliest} y {latest} mm del recorrido. La profundidad cuenta desde el medio y es incierta en {doubt} mm.',
    remedy: 'Leer el recorrido en el primer contacto a simple vista o con una fuerza pequeña conocida, o medir la copa con un calibre de profundidad.',
  },
  'readings-differ': {
    message: 'Los valores de {symbol} van de {lowest} a {highest} {unit}: {share} % de su media, cuando {limit} % ya es mucho para un solo material (práctica común).',
    remedy: 'Mirar el que más se aparta: sus lecturas, su lugar en la probeta, su registro. No descartar ninguno sin causa.',
  },
  'cupping-displacement-coarse': {
    message: 'Probeta {number}: un paso de la lectura de desplazamiento es de {step} mm; conviene 0,1 mm.',
    remedy: 'Emplear un sensor de desplazamiento más fino.',
  },
  'cupping-frame-included': {
    message: 'La profundidad contiene el movimiento de la máquina, que no se indicó.',
    remedy: 'Medir la flexibilidad de la máquina, o la profundidad de la copa con un calibre.',
  },
  'cupping-sheet-outside': {
    message: 'Un espesor de chapa de {thickness} mm está fuera del intervalo de 0,1 a 2 mm, en el que está definido el índice IE.',
    remedy: 'La chapa más gruesa o la estrecha tiene herramientas y símbolos propios; no comparar con IE.',
  },
  'cupping-blank-narrow': {
    message: 'La probeta tiene {width} mm de anchura; convienen 90 mm o más.',
    remedy: 'Cortar probetas más anchas, para que la sujeción actúe en todo el contorno.',
  },
  'cupping-holding-force': {
    message: 'La probeta se sujetó con {force} N, y no con unos 10 kN.',
    remedy: 'Ajustar la sujeción a unos 10 kN: una probeta floja se introduce en la matriz y da una profundidad demasiado grande.',
  },
  'cupping-tools-other': {
    message: 'Una bola de {ball} mm y una matriz de {die} mm no son las de 20 y 27 mm del índice IE.',
    remedy: 'Indicar las herramientas junto a la profundidad; no es comparable con IE.',
  },
  'cupping-few-blanks': {
    message: 'Probetas en las que se apoya la profundidad: {blanks}; convienen tres o más.',
    remedy: 'Ensayar al menos tres probetas y dar la media.',
  },
  'unloading-refused': {
    message: 'La reversibilidad del {reversibility} % es superior al 1,5 %: la fuerza solo es válida mientras sube, y por ello no se toma nada de la descarga.',
    remedy: 'Verificar la fuerza durante el descenso, o medirla en la probeta en lugar de en el aceite.',
  },
  'reversibility-unknown': {
    message: 'Se desconoce la reversibilidad de la fuerza: el rozamiento del cilindro curva y ensancha los ciclos.',
    remedy: 'Verificar la fuerza creciente y decreciente, e indicar su reversibilidad.',
  },
  'unloading-none': {
    message: 'El registro no contiene ninguna descarga: {why}.',
    remedy: 'Hacer retroceder el accionamiento hasta que la fuerza haya bajado lo suficiente, y volver a cargar; registrarlo todo.',
  },
  'unloading-not-to-zero': {
    message: 'El ciclo {number} solo baja hasta el {share} % de su punto más alto; su deformación remanente se lee donde su recta corta la tensión cero.',
    remedy: 'Descargar hasta cerca de cero cuando la deformación remanente sea decisiva.',
  },
  'permanent-set-not-bracketed': {
    message: 'No se determina {symbol}: las deformaciones remanentes de los ciclos van de {least} a {most} %.',
    remedy: 'Descargar desde una tensión menor y desde otra mayor, de modo que una deformación remanente quede por debajo del límite y otra por encima.',
  },
  'fracture-outside-middle': {
    message: 'La rotura está a {distance} mm de la marca más cercana, menos de un tercio de la longitud inicial entre marcas ({least} mm).',
    remedy: 'A sigue siendo válido si alcanza su valor mínimo; si no, medir por el método de las subdivisiones, o ensayar otra probeta.',
  },
  'fracture-at-mark': {
    message: 'La probeta rompió en una de las marcas.',
    remedy: 'Marcar más suavemente; A es dudoso, y la resistencia puede ser baja.',
  },
  'fracture-outside-parallel': {
    message: 'La probeta rompió {place}: A y Z no son los de la longitud calibrada, y la resistencia es un límite inferior.',
    remedy: 'Comprobar los radios de acuerdo, las mordazas y la alineación, y ensayar otra probeta.',
  },
  'elongation-small': {
    message: 'A = {elongation} % es menor que el 5 %: dos marcas ordinarias son demasiado gruesas para ello.',
    remedy: 'Medir con marcas finas: arcos trazados, leídos al microscopio.',
  },
  // planning
  'force-near-capacity': {
    message: 'La mayor fuerza previsible, {force} N, es el {share} % de la capacidad de {capacity} N.',
    remedy: 'Tomar una sección o una fuerza de ensayo menores; una familia de materiales no acota una barra desconocida.',
  },
  'force-above-capacity': {
    message: 'La mayor fuerza previsible, {force} N, es el {share} % de la capacidad de {capacity} N: el ensayo no debe hacerse en esta máquina.',
    remedy: 'Tomar una sección o una fuerza de ensayo menores, u otra máquina; no subir nunca el tarado de la válvula limitadora de presión.',
  },
  'force-unverified': {
    message: 'No se indicó ningún intervalo de fuerzas verificado de la máquina.',
    remedy: 'Hacer verificar la fuerza, e indicar la menor fuerza verificada y el error en ese punto.',
  },
  'force-below-verified': {
    message: 'La menor fuerza que cuenta, {force} N ({what}), es inferior a {limit} N ({why}).',
    remedy: 'Tomar una sección o una fuerza de ensayo mayores, o hacer verificar la parte baja del intervalo.',
  },
  'pressure-near-limit': {
    message: 'La presión del aceite llegaría a {pressure} MPa, el {share} % del límite de {limit} MPa ({device}).',
    remedy: 'Tomar una sección o una fuerza de ensayo menores; no subir nunca el tarado de la válvula limitadora de presión, y mantener el transmisor dentro de su alcance.',
  },
  'travel-near-stroke': {
    message: 'El ensayo necesita unos {travel} mm de desplazamiento, el {share} % de la carrera de {stroke} mm.',
    remedy: 'Eliminar la holgura antes de empezar el ensayo, o acortar la probeta dentro de lo que permiten las reglas.',
  },
  'frame-compliance-unknown': {
    message: 'Se desconoce la flexibilidad de la máquina: velocidad, desplazamiento y energía almacenada son valores mínimos, y E no se puede obtener del desplazamiento.',
    remedy: 'Medir la flexibilidad con un bloque rígido, una barra conocida o dos longitudes, o emplear un extensómetro.',
  },
  'oil-volume-unknown': {
    message: 'Se desconoce el volumen de aceite a presión: las emboladas del tramo elástico y la energía almacenada son valores mínimos.',
    remedy: 'Estimar el cilindro, las tuberías y las mangueras; el aceite requiere a menudo más emboladas que el pistón.',
  },
  'elastic-speed-too-fast-for-yield': {
    message: 'Mantenida durante la cedencia, la velocidad del tramo elástico deformaría la probeta a {rate} 1/s, {ratio} veces la velocidad que allí se pretende.',
    remedy: 'Reducir la velocidad antes de la cedencia, donde lo indica la hoja de ritmo.',
  },
  'elastic-part-quick': {
    message: 'A esta velocidad, el tramo elástico hasta el cambio de velocidad dura {time} s: apenas cinco lecturas de un comparador.',
    remedy: 'Registrarlo, o apuntar al extremo inferior de las velocidades que permite la norma.',
  },
  'ball-force-error': {
    message: 'La fuerza puede desviarse un {error} %; la fuerza de ensayo de una bola, un {limit} % como máximo.',
    remedy: 'Hacer verificar la máquina en clase 1 a esta fuerza, o elegir una fuerza a la que la cumpla.',
  },
  'drive-too-fast': {
    message: 'El accionamiento necesitaría {number} {what} por minuto en la fase «{stage}»: más de {limit} a mano son difíciles de mantener con regularidad.',
    remedy: 'Apuntar a una velocidad menor que la norma permita, e indicarla.',
  },
  'drive-strokes-coarse': {
    message: 'Una embolada de la bomba mueve el travesaño {travel} mm, {ratio} veces la extensión prescrita de Rp0.2: la cedencia pasa dentro de una sola.',
    remedy: 'Pasado el tramo elástico, mover la palanca despacio y solo en parte, o usar un accionamiento de pasos más finos.',
  },
  'planned-sampling-slow': {
    message: 'Una frecuencia de muestreo de {rate} por segundo es menor que los {least} que exige la velocidad de tensión de {stressRate} MPa/s: ReH puede resultar bajo en hasta {loss} MPa.',
    remedy: 'Registrar más rápido, o cargar más despacio en torno a la cedencia.',
  },
  'strain-not-in-accordance': {
    message: '{standard} pide un extensómetro: los límites elásticos convencionales y E se determinarían a partir del desplazamiento del travesaño, no conforme a ella.',
    remedy: 'Emplear un extensómetro, o indicar la desviación junto a cada valor.',
  },
  'structural-acceptance': {
    message: 'Los valores han de servir para aceptar una pieza que soporta carga: este plan no puede hacerlo.',
    remedy: 'Seguir el código aplicable; deciden un laboratorio competente con una máquina verificada y un profesional titulado o autorizado de otro modo.',
  },
  'planned-index-unusual': {
    message: 'El coeficiente fuerza-diámetro 0,102 F/D² = {index} no es ninguno de los habituales: {usual}.',
    remedy: 'Tomar una fuerza de la tabla para esta bola.',
  },
  'planned-indentation-outside': {
    message: 'Con {hardness} HBW la huella sería {ratio} veces la bola, fuera de 0,24 a 0,60.',
    remedy: 'Tomar otro valor del coeficiente fuerza-diámetro.',
  },
  'planned-span-short': {
    message: 'La distancia entre apoyos es {ratio} veces el canto de la barra: por debajo de {limit} el cortante se suma a la flecha.',
    remedy: 'Tomar una distancia entre apoyos mayor, o no determinar E.',
  },
  'planned-buckling': {
    message: 'Con una relación entre altura y diámetro de {ratio}, la probeta puede pandear a partir de una deformación de {strain}, antes de la prevista de {planned}.',
    remedy: 'Tomar una probeta más corta, de hasta 3 diámetros, o detenerse antes.',
  },
  'head-weak': {
    message: '{what}: {stress} MPa con la fuerza mayor, frente a {limit} MPa que la cabeza puede soportar; {margin} veces lo necesario.',
    remedy: 'Hacer la cabeza mayor, o la sección menor; la probeta debe romper dentro de su longitud calibrada.',
  },
  'head-too-small': {
    message: 'La cabeza es {ratio} veces la sección, menos de {least}.',
    remedy: 'Hacer la cabeza más ancha; una probeta que rompe por la cabeza es una probeta perdida.',
  },
  'grip-short': {
    message: 'Las mordazas sujetan {length} mm de la cabeza, menos de {least} mm.',
    remedy: 'Hacer las cabezas más largas: en las mordazas de cuña deben sujetar dos tercios de las caras, y una rosca debe entrar la longitud de su diámetro.',
  },
  'grip-may-slip': {
    message: 'Las mordazas sujetan {margin} veces lo necesario, menos de {least}.',
    remedy: 'Limpiar y afilar las caras, engrasar el dorso de las cuñas, aumentar la fuerza de apriete o alargar la cabeza.',
  },
  'fillet-small': {
    message: 'El radio de acuerdo, {radius} mm, es menor que {least} mm.',
    remedy: 'Hacerlo mayor: en un ángulo vivo se inicia la rotura.',
  },
  'parallel-length-long': {
    message: 'La longitud calibrada de {length} mm es {ratio} veces la longitud inicial entre marcas de {gauge} mm: la probeta puede romper fuera de las marcas.',
    remedy: 'Acortar la longitud calibrada, o marcar intervalos iguales a lo largo de toda ella.',
  },
  'piece-too-short': {
    message: 'En una longitud total de {length} mm no caben la longitud calibrada, los radios de acuerdo y las cabezas, que necesitan {least} mm.',
    remedy: 'Cortar la barra de partida más larga, o hacer las cabezas más cortas dentro de lo que necesitan las mordazas.',
  },
  'shape-outside-tolerance': {
    message: 'La dimensión ({dimension}) varía {difference} mm a lo largo de la probeta, más de {limit} mm.',
    remedy: 'Mecanizar de nuevo la probeta, o medirla en más lugares e indicar la desviación.',
  },
  'size-outside-tolerance': {
    message: 'La dimensión ({dimension}) se aparta {difference} mm de su valor nominal, más de {limit} mm: el área debe medirse, no tomarse como nominal.',
    remedy: 'Medir la probeta y usar su propia área.',
  },
  // uncertainty
  'budget-not-linear': {
    message: 'El modelo se curva dentro de la incertidumbre de «{input}»: lo que el balance deja fuera es el {share} % de la varianza.',
    remedy: 'Comprobar por Monte Carlo y dar su intervalo; la distribución es probablemente asimétrica.',
  },
  'one-term-dominates': {
    message: 'El término «{input}» aporta el {share} % de la varianza de {symbol}.',
    remedy: 'Mejorar primero este término; comprobar por Monte Carlo, puesto que su forma es la forma del resultado.',
  },
  'few-degrees-of-freedom': {
    message: 'La incertidumbre de {symbol} se apoya en pocos grados efectivos de libertad, {freedom}: el factor de cobertura es {factor}.',
    remedy: 'Tomar más lecturas del término dominante, o emplear una desviación típica combinada.',
  },
  'uncertainty-incomplete': {
    message: 'Las incertidumbres dejan fuera lo que no se indicó: {missing}.',
    remedy: 'Indicar sus incertidumbres; lo que se deja fuera cuenta como exacto.',
  },
  'uncertainty-large': {
    message: 'La incertidumbre típica de «{input}» es el {share} % de su valor.',
    remedy: 'Ver si se quiso decir por ciento u otra unidad: las incertidumbres relativas son fracciones (0,005 es 0,5 %), las longitudes van en mm.',
  },
  'zero-uncertainty-large': {
    message: 'La incertidumbre típica del cero de la fuerza es el {share} % de la fuerza máxima.',
    remedy: 'Ver si se quiso decir otra unidad: va en N y no es una fracción de la fuerza.',
  },
  'uncertainty-not-determined': {
    message: 'No se da incertidumbre de {symbols}: al cambiar «{input}» en una parte de su incertidumbre, por pequeña que sea, el ensayo no da valor.',
    remedy: 'Indicar una incertidumbre menor de esa magnitud, o hacer una simulación de Monte Carlo y dar su intervalo con las simulaciones que no dieron valor.',
  },
  'noise-decides': {
    message: 'No se da incertidumbre de {symbols}: con otro ruido de la misma magnitud, la mayoría de las repeticiones del ensayo no tienen ese valor.',
    remedy: 'El valor puede deberse al ruido: darlo solo si la curva lo muestra. Registrar con menos ruido.',
  },
  'budgets-not-linear': {
    message: 'El ensayo responde a «{input}» con una curva dentro de su incertidumbre: los balances dejan fuera hasta el {share} % de la varianza ({symbols}).',
    remedy: 'Comprobarlos por Monte Carlo y dar sus intervalos; las distribuciones son probablemente asimétricas.',
  },
  'budgets-of-few-degrees-of-freedom': {
    message: 'Hay incertidumbres que se apoyan en pocos grados efectivos de libertad, {freedom} como mínimo: {symbols}.',
    remedy: 'Tomar más lecturas del término dominante, o emplear una desviación típica combinada.',
  },
  'noise-correlated': {
    message: 'El ruido de datos vecinos va unido (correlación {correlation}): la ventana elástica lo sigue, y su elección es una línea de los balances.',
    remedy: 'Buscar el origen de la perturbación lenta; elegir la ventana manualmente, y amplia.',
  },
  'budget-not-validated': {
    message: 'El balance y Monte Carlo difieren en los extremos del intervalo de {symbol} en {low} y {high} {unit}, cuando se admite {tolerance} {unit}.',
    remedy: 'Dar el intervalo de Monte Carlo; el modelo no es lo bastante lineal, o la forma no es lo bastante normal, para el balance.',
  },
  'budgets-not-validated': {
    message: 'El balance y Monte Carlo difieren en los extremos del intervalo en más de lo que se admite: {symbols}.',
    remedy: 'Dar para ellos los intervalos de Monte Carlo; el modelo no es lo bastante lineal, o la forma no es lo bastante normal, para el balance.',
  },
  'budget-trials-few': {
    message: 'Las simulaciones son demasiado pocas para decir si vale el intervalo del balance: {symbols}.',
    remedy: 'Hacer más simulaciones donde importe; con cuatro veces más, los extremos se conocen el doble de bien.',
  },
  'monte-carlo-not-converged': {
    message: 'Monte Carlo terminó tras {trials} simulaciones antes de que sus resultados fueran estables dentro de {tolerance}.',
    remedy: 'Permitir más simulaciones, o pedir menos cifras.',
  },
  'monte-carlo-no-variance': {
    message: '{input} tiene {freedom} grados de libertad. Con 2 o menos, como con tres lecturas, sus simulaciones no tienen varianza: no dan a {symbol} una incertidumbre típica, pero sí un intervalo.',
    remedy: 'Indicar el intervalo y la incertidumbre típica del balance; cuatro lecturas o una desviación típica combinada dan varianza a las simulaciones.',
  },
  'monte-carlo-trials-few': {
    message: '{trials} simulaciones son pocas para un intervalo del {coverage} %: sus extremos se conocen a partir de {least}.',
    remedy: 'Hacer más simulaciones, o no indicar su número: el cálculo termina entonces cuando sus resultados son estables.',
  },
  'monte-carlo-trials-failed': {
    message: 'Simulaciones que no dieron {symbol}: {failed} de {trials}.',
    remedy: 'La distribución es la de las que lo dieron; ver si el valor existe siquiera dentro de su incertidumbre.',
  },
  // several tests, decisions, values that check each other
  'few-replicates': {
    message: 'De dos resultados solo se da el recorrido: {symbols}.',
    remedy: 'Ensayar al menos tres probetas; una desviación típica de dos no dice nada.',
  },
  'esd-few-values': {
    message: '{n} valores: los límites de este ensayo de varios valores atípicos son buenos desde 25 valores y aceptables desde 15.',
    remedy: 'Buscar un solo valor atípico con Grubbs, o ensayar más probetas.',
  },
  'variation-above-usual': {
    message: '{symbol} varía un {variation} %, más del triple del {usual} % habitual dentro de un laboratorio.',
    remedy: 'Buscar una causa en el mecanizado, la sujeción, la medición o la fuerza antes de culpar al metal.',
  },
  'replicate-outlying': {
    message: '{symbol} del ensayo {test} ({value} {unit}) se aparta más de lo que explica el azar: G = {statistic}, superior a {limit}.',
    remedy: 'Buscar una causa física y anotarla; sin ella el valor se conserva.',
  },
  'replicate-odd': {
    message: 'El ensayo {test} se aparta más de lo que explica el azar en varias magnitudes: {symbols}; sobre todo en {symbol}, {value} {unit} (G = {statistic}, superior a {limit}).',
    remedy: 'Varias magnitudes a la vez señalan lo que comparten: la sección, la fuerza o una longitud de esa probeta. Anotar la causa; sin ella, los valores se quedan.',
  },
  'replicates-repeated': {
    message: 'Un mismo registro se da como varios ensayos: {tests}. Cuenta {count} veces, así que n es demasiado grande y la dispersión demasiado pequeña.',
    remedy: 'Quitar las copias; varias evaluaciones de un registro no son réplicas.',
  },
  'replicates-read-alike': {
    message: 'Los ensayos {tests} tienen las mismas lecturas, {count} veces: iguales por azar, como pueden serlo lecturas de pocas cifras, o un ensayo dado varias veces.',
    remedy: 'Quitar lo que sea copia; las lecturas de probetas distintas se quedan.',
  },
  'replicates-mixed': {
    message: 'Los ensayos difieren en {what} ({values}) y aun así se agruparon.',
    remedy: 'Su dispersión contiene también esa diferencia; cuando sea decisivo, agrupar solo lo semejante.',
  },
  'replicates-not-pooled': {
    message: 'No se agruparon {symbols}: los ensayos difieren en {what} ({values}).',
    remedy: 'Agrupar solo lo semejante (los alargamientos, tras convertirlos según ISO 2566), o pedir la agrupación en las opciones.',
  },
  'replicates-at-least': {
    message: '{symbols}: sin tomar de {count} de los {total} ensayos ({tests}), que terminaron antes de su fuerza máxima; sus valores son solo al menos así de grandes.',
    remedy: 'Ensayar otras probetas hasta la rotura; una media sin estos ensayos no es la de todos, y no dice nada de la dispersión de todos.',
  },
  'group-off-the-mean': {
    message: 'La media del grupo {group} está desviada: h = {h}, más allá de {limit}.',
    remedy: 'Comparar su máquina, longitudes, unidades y lecturas con las de los demás; conservar sus resultados.',
  },
  'group-scatters': {
    message: 'El grupo {group} se dispersa más que los demás: k = {k}, superior a {limit}.',
    remedy: 'Revisar su sujeción, sus lecturas y su mecanizado; conservar sus resultados.',
  },
  'group-variance-outlying': {
    message: 'Al grupo {group} le corresponde una fracción de {share} de la suma de cuadrados (límite {limit}); según el ensayo de Cochran: {verdict}.',
    remedy: 'Buscar una causa; excluirlo solo cuando se encuentre una y se anote.',
  },
  'group-mean-outlying': {
    message: 'La media del grupo {group} es la más apartada: G = {statistic} (límite {limit}); según el ensayo de Grubbs: {verdict}.',
    remedy: 'Buscar una causa; excluirlo solo cuando se encuentre una y se anote.',
  },
  'limit-within-uncertainty': {
    message: '{symbol} está a {distance} {unit} de su límite, dentro de su incertidumbre expandida {uncertainty} {unit}: según la incertidumbre sola puede estar a un lado u otro.',
    remedy: 'Citar la regla de decisión junto al veredicto; ensayar más probetas o medir mejor cuando sea decisivo.',
  },
  'limit-of-other-size': {
    message: '{symbol} vale {value} {unit} y su límite {limit} {unit}: uno es {ratio} veces el otro, como si estuvieran en unidades distintas.',
    remedy: 'Indicar el límite en la unidad del valor: N, mm, MPa, y las fracciones como cociente (0,22 o 22 %, no 22).',
  },
  'acceptance-zone-empty': {
    message: 'Las bandas de guarda de {guard} {unit} a ambos lados no dejan nada entre {lower} y {upper} {unit}: ningún valor de {symbol} puede aprobar.',
    remedy: 'Medir mejor o ensayar más probetas hasta que las bandas de guarda quepan entre los límites, o acordar otra regla antes del ensayo.',
  },
  'guard-of-two-limits': {
    message: '{symbol} aprueba, con un riesgo de {risk} %: la banda de guarda mantiene {one} % en cada límite, y los dos límites están cerca.',
    remedy: 'Si el riesgo en un límite se acordó como riesgo total, pedir una banda de guarda más ancha (guardFactor) o medir mejor.',
  },
  'rounding-decides': {
    message: 'Decide el redondeo: {symbol} se comparó como {compared} {unit}; {value} {unit}, tal como se midió, da el otro veredicto.',
    remedy: 'Indicarlo junto al veredicto: el redondeo forma parte de la regla acordada, y el riesgo es el del valor medido.',
  },
  'decision-without-uncertainty': {
    message: 'La decisión sobre {symbol} se tomó sin su incertidumbre: se desconoce el riesgo de equivocarse.',
    remedy: 'Determinar la incertidumbre; sin ella solo es posible la aceptación simple.',
  },
  'decision-on-travel': {
    message: '{symbol} se basa en el desplazamiento del travesaño: el veredicto vale a condición de que un extensómetro lo confirme.',
    remedy: 'Repetir con un extensómetro antes de que el valor sirva para la aceptación.',
  },
  'decision-without-hardening': {
    message: '{symbol} corresponde a la tensión más alta del escalón de cedencia: ningún endurecimiento le sigue, y la ISO 6892-1 no define allí ningún Rm.',
    remedy: 'Acordar qué sustituye a la resistencia de un material así antes de que el valor sirva para la aceptación.',
  },
  'decision-for-structure': {
    message: '{symbol} se destina a uso estructural: el veredicto vale a condición de que lo confirmen un laboratorio cualificado y el ingeniero responsable.',
    remedy: 'Seguir los códigos locales y el criterio de profesionales habilitados; un ensayo de prácticas no es un certificado.',
  },
  'gauge-length-unstated': {
    message: 'Se desconoce la longitud inicial entre marcas de {symbol}, por lo que el límite puede referirse a otra.',
    remedy: 'Indicar la longitud inicial entre marcas y el área junto al valor.',
  },
  'values-disagree': {
    message: '{link}: {left} = {leftValue} {leftUnit} y {right} = {rightValue} {rightUnit} no son compatibles (tolerancia {tolerance} {leftUnit}).',
    remedy: 'Véanse las causas probables de la relación; una de las dos lecturas, o la regla misma, no es válida aquí.',
  },
  'link-one-sided': {
    message: '{link}: {symbol} es solo al menos así de grande, pues el ensayo terminó antes de su fuerza máxima; la relación puede mostrar que es demasiado grande, no que es demasiado pequeño.',
    remedy: 'Ensayar hasta pasar la fuerza máxima; entonces se pueden comparar los dos lados.',
  },
  'compared-record-differs': { message: 'Los dos resultados proceden de registros distintos ({first} y {second}).', remedy: 'Nada que hacer si se comparan dos ensayos; si se trataba de un solo registro, buscar el archivo que cambió.' },
  'compared-piece-differs': { message: 'Las probetas difieren en: {names}.', remedy: 'Comparar primero las medidas de la probeta; desplazan todo valor que depende de ellas.' },
  'compared-options-differ': { message: 'Las opciones de los dos resultados difieren en: {names}.', remedy: 'Evaluar ambos con las mismas opciones si se han de comparar los ensayos.' },
  'compared-version-differs': { message: 'Los dos resultados se obtuvieron con las versiones {first} y {second}.', remedy: 'El registro de cambios dice dónde se movieron los números de una versión a otra.' },
  'compared-value-moved': { message: '{symbol} se movió {difference} {unit} desde {first} {unit} aunque registro, probeta y opciones son los mismos (versiones {firstVersion} y {secondVersion}).', remedy: 'El registro de cambios debería nombrar el cambio; dentro de una versión la misma entrada da el mismo número, así que uno de los dos fue alterado.' },
  'compared-beyond-uncertainty': { message: '{symbol} difiere en {times} incertidumbres típicas, más de {limit}: {first} y {second} {unit}.', remedy: 'Buscar una causa en la probeta, la máquina o las opciones, o una fuente que la incertidumbre deja fuera.' },
  'compared-one-lacks': { message: 'Solo el resultado {number} de los dos contiene {symbol}.', remedy: 'Las observaciones del otro resultado dicen por qué falta allí, o no se pidió.' },
  'compared-at-least': {
    message: 'No se da la diferencia de: {symbols}; donde un ensayo terminó antes de su fuerza máxima (resultado {numbers}), el valor es solo al menos así de grande.',
    remedy: 'Comparar ensayos que hayan pasado su fuerza máxima; una cota solo informa de un lado.',
  },
  'calibration-date-missing': { message: 'No se indicó el día de la última verificación de la fuerza, por lo que se desconoce su antigüedad.', remedy: 'Indicar el día del certificado en la forma año-mes-día.' },
  'calibration-age-unknown': { message: 'La fuerza se verificó el {date}; el día del ensayo no se indicó en la forma año-mes-día, por lo que se desconoce la antigüedad de la verificación.', remedy: 'Indicar el día del ensayo en la forma año-mes-día.' },
  'calibration-expired': { message: 'La fuerza se verificó el {date}, {months} meses antes del ensayo; su intervalo es de {interval} meses.', remedy: 'Verificar la fuerza antes del próximo ensayo, y juzgar este por los errores hallados en el estado en que se encontró.' },
  'calibration-after-test': { message: 'La fuerza se verificó el {date}, después del ensayo del {test}: una verificación posterior muestra lo que la fuerza indica ahora.', remedy: 'Indicar la verificación vigente el día del ensayo; con los errores de la posterior, en el estado en que se encontró, juzgar qué deriva pudo haber.' },
  'force-outside-verified': { message: '{symbol} está a {force} N; la fuerza se verificó de {low} a {high} N.', remedy: 'Verificar la fuerza donde se utiliza, o tomar una probeta mayor o menor; no declarar ninguna clase para este valor.' },
  'force-outside-calibration': {
    message: '{symbol} está a {force} N; el canal solo está calibrado de {low} a {high} N.',
    remedy: 'Calibrar donde se usa la fuerza: desde por debajo de la ventana elástica hasta el máximo.',
  },
  'calibration-hardly-used': { message: 'La fuerza más alta, {force} N, es el {share} % de aquella hasta la que está calibrado el canal ({high} N): el ensayo usa poco de la calibración, o los dos están en unidades distintas (bar en lugar de MPa da una décima parte; kN en lugar de N, una milésima).', remedy: 'Comparar las unidades del registro y de la calibración. Si coinciden, calibrar hasta la fuerza que se usa: las dudas de la calibración son partes de su fuerza más alta.' },
  'force-class-coarse': { message: 'La fuerza está verificada con clase {forceClass}; las normas de ensayo habituales piden la clase 1 o mejor.', remedy: 'No declarar conformidad con ellas; buscar qué limita la clase.' },
  'force-class-not-in-uncertainty': { message: 'La fuerza está verificada con clase {forceClass}: todas las fuerzas y tensiones pueden tener un error del {share} %, y ninguna incertidumbre indicada lo contiene.', remedy: 'Indicar la clase o la incertidumbre de la fuerza entre las incertidumbres del ensayo, o añadirla al balance del resultado.' },
  'force-class-unlike': { message: 'Las incertidumbres cuentan la fuerza como de clase {counted}; está verificada con clase {forceClass}.', remedy: 'Contar la clase del certificado.' },
  'calibration-outlier': { message: 'El par {pair} de la calibración, a {force} N, se aparta {off} N de la calibración de todos los demás (de grado {without}; con él de grado {degree}): es un valor atípico y no se ha retirado.', remedy: 'Buscar un error de escritura o de lectura y medir de nuevo ese par; retirarlo solo por una causa conocida.' },
  'calibration-degree-by-one': { message: 'El grado {degree} de la calibración descansa en el par {pair}, a {force} N: sin él basta el grado {without}.', remedy: 'Medir de nuevo ese par y otros cercanos; un solo par no distingue un canal curvo de un error.' },
  'calibration-hysteresis': { message: 'De vuelta, la referencia indica {difference} N más que de ida con la misma lectura, un {share} % de la fuerza más alta y más que la dispersión.', remedy: 'Calibrar solo con fuerza creciente, como se ensaya, o contar la diferencia entre las incertidumbres; buscar rozamiento en las juntas.' },
  'calibration-points-few': { message: '{points} pares en {readings} lecturas dejan {freedom} grados de libertad junto al grado {degree}: la dispersión de la calibración, y un valor atípico entre sus pares, apenas se conocen.', remedy: 'Calibrar en cinco fuerzas como mínimo, tres veces cada una.' },
  'calibration-scatter': { message: 'A {force} N la calibración se aparta un {share} % de su par; un canal de clase 1 puede apartarse un {allowed} %.', remedy: 'Buscar qué dispersa (lectura, rozamiento, referencia) y medir de nuevo; no atribuirle una clase mejor.' },
  'force-nominal': { message: 'La fuerza es la presión del aceite por el área nominal de {area} mm²: lo que retienen juntas y guías, de ordinario algunos por ciento, cuenta como fuerza de la probeta, y cada tensión es demasiado alta en esa medida.', remedy: 'Calibrar frente a un dinamómetro patrón; hasta entonces, dar un rendimiento junto con la incertidumbre de la fuerza, o la clase de una fuerza verificada.' },
  'force-efficiency-doubt': { message: 'La fuerza es la presión del aceite por el área nominal de {area} mm² y un rendimiento de {efficiency} cuya incertidumbre no se indica; el rozamiento de las juntas cambia con la presión, el desgaste y la temperatura.', remedy: 'Calibrar frente a un dinamómetro patrón, o indicar la incertidumbre de la fuerza o la clase de una fuerza verificada.' },
  'channel-calibration-old': { message: 'El canal de fuerza se calibró el {date}, {months} meses antes del ensayo; lo habitual es un año como máximo.', remedy: 'Calibrarlo de nuevo, o indicar una verificación de la fuerza válida el día del ensayo.' },
  'compliance-of-other-grips': { message: 'La flexibilidad de la máquina se midió con las mordazas «{measured}»; este ensayo se hizo con «{used}».', remedy: 'Medir la flexibilidad con las mordazas del ensayo: las mordazas son una gran parte de ella.' },
  'compliance-of-other-direction': { message: 'La flexibilidad de la máquina se midió en {measuredDirection}; este ensayo carga la máquina en {usedDirection}.', remedy: 'Medir la flexibilidad en el sentido del ensayo: son otras las partes de la máquina que soportan la fuerza.' },
  'pause-in-elastic-window': { message: 'El accionamiento estuvo parado dentro de la ventana de la recta elástica: {count} veces, la más larga {duration} s a {strain} mm/mm.', remedy: 'Situar la ventana por encima o por debajo de la pausa, o cargar el tramo elástico sin parar: lo que se relaja ahí curva la recta.' },
  'falls-many': { message: 'Durante la carga, el accionamiento retrocede {count} veces y la fuerza con él; la mayor bajada es de {fall} N, en el dato {sample}.', remedy: 'Bombear sin dejar que el pistón retroceda; examinar la válvula y la bomba. La evaluación deja fuera esos bucles.' },
};
