import type { FindingCode } from '../base/index.js';
import type { FindingWords } from './Language.js';

/** @internal Findings in German. */
export const germanFindings: Readonly<Record<FindingCode, FindingWords>> = {
  // record
  'time-missing': {
    message: 'Die Aufzeichnung enthält keine Zeitspalte; Geschwindigkeiten, Pausen und Gleichmäßigkeit der Belastung sind daher unbekannt.',
    remedy: 'Zu jedem Messpunkt die Zeit aufzeichnen; ein Zeitschritt wird nicht angenommen.',
  },
  'time-not-increasing': {
    message: 'Die Zeit springt {count}-mal zurück, erstmals bei Messpunkt {first}; Geschwindigkeiten werden nicht angegeben.',
    remedy: 'Uhr des Datenloggers prüfen, oder ob zwei Versuche in einer Datei stehen.',
  },
  'time-gap': {
    message: 'Lücken in der Zeit: {count}, die längste mit {longest} s bei Messpunkt {first}; sonst folgen die Messpunkte im Abstand von {usual} s.',
    remedy: 'Prüfen, dass keine Lücke in den Fließbereich, auf die Höchstkraft oder auf den Bruch fällt; was während einer Pause des Datenloggers geschieht, geht verloren.',
  },
  'time-unit-changes': {
    message: 'Ab Messpunkt {sample} sind die Zeitschritte das {factor}-Fache der vorherigen: zwei Zeiteinheiten, oder die Uhr wurde neu gestellt.',
    remedy: 'Die Zeit aus der Abtastrate des Datenloggers neu aufbauen (`rebuildTime`) oder weglassen; Geschwindigkeiten über den Wechsel hinweg sind bedeutungslos.',
  },
  'time-coarse': {
    message: '{share} % der Messpunkte tragen dieselbe Zeit wie ihr Vorgänger: Die Uhr schreitet in Schritten von {step} s fort, gröber als die Aufzeichnung.',
    remedy: 'Die Zeit mit mehr Stellen aufzeichnen oder aus der Abtastrate des Datenloggers neu aufbauen (`rebuildTime`).',
  },
  'time-unit-unlikely': {
    message: '{samples} Messpunkte in {duration} s, einer je {usual} s: So belastet keine Hand; die Zeiteinheit ist möglicherweise eine andere.',
    remedy: 'Beim Einlesen der Datei die Zeiteinheit angeben.',
  },
  'force-sign-reversed': {
    message: 'Die Kraft fällt bis {lowest} N und steigt nur bis {highest} N: Zug wird vermutlich negativ gezählt.',
    remedy: 'Das Vorzeichen der Kraft umkehren (`reverseSign`) und die Verdrahtung oder die Vorzeichenregel des Datenloggers prüfen.',
  },
  'channels-exchanged': {
    message: 'Der Weg fällt bei Messpunkt {sample} ab, von höchstens {highest} mm, während die Kraft bei {force} N bleibt: Kraft und Weg sind wahrscheinlich vertauscht.',
    remedy: 'Beim Einlesen die Spalten nennen (`columns`) und die Stecker des Messgeräts prüfen.',
  },
  'motion-sign-reversed': {
    message: 'Signal {column}: Es läuft von {first} nach {last} {unit}, während die Kraft steigt; das Vorzeichen ist umgekehrt.',
    remedy: 'Das Vorzeichen umkehren (`reverseSign`) und die Vorzeichenregel des Datenloggers prüfen.',
  },
  spikes: {
    message: 'Signal {column}: Zahl der Störspitzen {count}; die größte weicht um {largest} {unit} von ihren Nachbarn ab, bei Messpunkt {first}.',
    remedy: 'Die Spitzen werden, sofern nicht abgeschaltet, durch die Gerade zwischen ihren Nachbarn ersetzt; nach einem losen Stecker oder einer Störquelle suchen.',
  },
  'signal-drops-out': {
    message: 'Signal {column}: ausgefallen ab Messpunkt {first}, danach wieder vorhanden; Messpunkte ohne Wert: {count}.',
    remedy: 'Stecker und Kabel prüfen; über den Versuch dazwischen ist nichts bekannt.',
  },
  'signal-strays': {
    message: 'Signal {column}: springt bei Messpunkt {first} um {height} {unit} aus seiner Linie und wieder zurück; betroffene Messpunkte: {count}. Kaum eine Probe oder ein Antrieb tut das.',
    remedy: 'Sofern nicht abgeschaltet, tritt eine Gerade an ihre Stelle; über den Versuch dazwischen ist nichts bekannt. Nach einem losen Stecker, einer Störquelle oder einer Hand am Kabel suchen.',
  },
  'force-bulges': {
    message: 'Die Kraft verlässt bei Messpunkt {first} ihre Kurve um {height} N und kommt zurück; betroffene Messpunkte: {count}. Während der Weg so weitergeht, tut das weder eine Probe noch ein Antrieb.',
    remedy: 'Sofern nicht abgeschaltet, tritt eine Gerade an ihre Stelle; über den Versuch dazwischen ist nichts bekannt. Nach einem Stoß gegen den Rahmen, einer Hand am Kabel oder einer Störung des Messumformers suchen.',
  },
  'signal-noisy': {
    message: 'Signal {column}: Das Rauschen beträgt {noise} {unit}, das sind {share} % der Spanne.',
    remedy: 'Das Signal schirmen und erden; jeder Wert trägt diese Streuung.',
  },
  'reading-coarse': {
    message: 'Signal {column}: abgelesen in Schritten von {step} {unit}, über den Versuch {counts} Schritte.',
    remedy: 'Ein feinerer Messbereich des Datenloggers oder ein feinerer Aufnehmer liefert mehr Stellen; unter einigen hundert Schritten begrenzt die Auflösung, was daraus abgelesen wird: aus einer Kraft Festigkeiten, aus einem Weg Dehnungen und Tiefungen.',
  },
  'motion-saturated': {
    message: 'Signal {column}: Es verharrt über die letzten {count} Messpunkte bei {value} {unit}, während die Kraft weiterläuft; der Aufnehmer war vermutlich am Anschlag.',
    remedy: 'Den Messweg des Aufnehmers prüfen; Dehnungen von dort an sind zu klein.',
  },
  'late-tare': {
    message: 'Die Kraft wurde bei Messpunkt {sample} um {step} N auf null gesetzt, während sich nichts bewegte; was davor liegt, zählt von einem anderen Nullpunkt.',
    remedy: 'Nichts zu tun; der Nullabgleich gehört vor das beidseitige Einspannen der Probe.',
  },
  'zero-before-loading': {
    message: 'Vor der Belastung zeigt der Kraftkanal {force} N an, {share} % seines Höchstwerts.',
    remedy: 'Den Betrag abziehen (`tare`), wenn die Probe nur an einem Ende gehalten war; der Nullabgleich gehört vor das beidseitige Einspannen der Probe.',
  },
  'zero-after-fracture': {
    message: 'Nach dem Bruch zeigt der Kraftkanal {force} N an, {share} % seines Höchstwerts, und kein Abschnitt vor der Belastung zeigt den Nullpunkt.',
    remedy: 'Vor der Belastung einige Sekunden aufzeichnen; jede Kraft kann diese Nullpunktabweichung tragen.',
  },
  'grip-slip': {
    message: 'Die Probe rutschte bei Messpunkt {sample} in der Einspannung; Signal {column}: Änderung um {way} {unit}, die sich aus der Kraft nicht erklärt (die Kraft fiel um {fall} N).',
    remedy: 'Die Spannbacken reinigen oder wechseln; Dehnungen aus dem Traversenweg sind nach dem Rutschen zu groß, sofern es nicht herausgenommen wird (`joinSlips`). Rm, ReH und ReL sind nicht betroffen; Dehngrenzen und Dehnungen danach sind es.',
  },
  'drive-reversed': {
    message: 'Der Antrieb lief bei Messpunkt {sample} zurück (Signal {column}: {way} {unit}) und mit ihm die Kraft, um {fall} N: Die Probe wurde entlastet und erneut belastet.',
    remedy: 'Nur in einer Richtung belasten; die Auswertung lässt diesen Abschnitt aus, die Kurve behält ihn (`loadingEnvelope` nimmt ihn auch aus der Aufzeichnung).',
  },
  'motion-backlash': {
    message: 'Signal {column}: bei Messpunkt {sample} um {way} {unit} zurückgegangen, weit mehr, als die um {fall} N gefallene Kraft verlangt; Spiel im Antrieb oder im Aufnehmer.',
    remedy: 'Nach Spiel in Spindel, Bolzen oder Aufnehmer suchen; Dehnungen in der Nähe sind zweifelhaft.',
  },
  'force-zero-moved': {
    message: 'Die Kraft fällt bei Messpunkt {sample} schlagartig um {fall} N und läuft von dort weiter: Ihr Nullpunkt wurde während des Versuchs verschoben.',
    remedy: 'Die Kraft nur dann wieder zusammenfügen (`restoreZero`), wenn das tatsächlich geschehen ist; an einer belasteten Probe nie den Nullabgleich auslösen.',
  },
  'motion-jumps': {
    message: 'Signal {column}: springt {count}-mal, während die Kraft weiterläuft, um bis zu {largest} {unit} bei Messpunkt {sample}; der Aufnehmer rutschte oder wurde neu gesetzt.',
    remedy: 'Die Teile zusammenfügen (`joinJumps`), wenn die Probe nicht berührt wurde; Verlängerungen über einen Sprung hinweg sind zweifelhaft.',
  },
  'extensometer-slipped': {
    message: 'Signal {column}: springt zurück, während die Kraft längs der elastischen Geraden weiterläuft: {count}-mal, am weitesten um {largest} {unit} bei Messpunkt {sample}; der Längenänderungsaufnehmer ist gerutscht.',
    remedy: 'Die Schneiden säubern und fest ansetzen; die Teile zusammenfügen (`joinJumps`) oder das elastische Auswertefenster davon frei halten: ein Rutschen zurück macht die Steigung zu groß.',
  },
  'channels-out-of-step': {
    message: 'Der Versatz zwischen Kraft und Bewegung, in Messpunkten gezählt, beträgt {samples}: Ihre Änderungsraten stimmen so verschoben zu {correlation} überein, wie aufgezeichnet zu {without}.',
    remedy: 'Beide mit einer gemeinsamen Uhr aufzeichnen oder zueinander ausrichten (`alignChannels`); ein Zeitversatz krümmt die elastische Gerade.',
  },
  'several-tests': {
    message: 'Die Aufzeichnung enthält {count} Versuche, den zweiten ab Messpunkt {second}.',
    remedy: 'Aus jedem eine eigene Datei machen oder die Aufzeichnung teilen (`splitTests`) und jeden Versuch für sich auswerten.',
  },
  'file-cut-off': {
    message:
      'Die Datei endet mitten in Zeile {line} ({text}): kein Zeilenende folgt, und sie hat weniger Zellen oder Ziffern als die Zeilen darüber. Sie wurde weggelassen; was der Datenlogger danach schrieb, ist nicht bekannt.',
    remedy: 'Die Datei noch einmal vom Datenlogger kopieren; ob die Probe brach, steht in dieser nicht.',
  },
  'channel-empty': {
    message: 'Signal {column}: keine zwei Zahlenwerte vorhanden; der Aufnehmer war nicht eingeschaltet oder wurde nicht aufgezeichnet.',
    remedy: 'Die Spalte prüfen; der Versuch wird ausgewertet, als gäbe es sie nicht.',
  },
  'samples-repeated': {
    message: '{share} % der Messpunkte wiederholen ihren Vorgänger: Der Datenlogger war schneller als der Aufnehmer.',
    remedy: 'Wiederholte Messpunkte beschönigen die Streuung einer Steigung; mit der Rate des langsamsten Aufnehmers aufzeichnen.',
  },
  'force-saturated': {
    message: 'Die Kraft verharrt über {count} Messpunkte bei ihrem Höchstwert {force} N: Der Kanal war am Ende seines Messbereichs, oder die Probe fließt bei dieser Kraft.',
    remedy: 'Die Messbereiche von Messumformer und Datenlogger prüfen; die wahre Höchstkraft und eine Festigkeit, die auf dem flachen Gipfel liegt, können höher liegen.',
  },
  'force-does-not-rise': {
    message: 'Die Kraft steigt nie an: von {first} N zu Beginn auf höchstens {highest} N.',
    remedy: 'Vorzeichen und Spalte der Kraft prüfen, ferner ob die Datei einen Belastungsabschnitt enthält.',
  },
  'force-looks-like-kilonewton': {
    message: 'Eine höchste Spannung von {stress} MPa ist für ein Metall zu niedrig: Die Kraft liegt möglicherweise in kN vor, wo N erwartet wurde.',
    remedy: 'Beim Einlesen der Datei die Krafteinheit angeben.',
  },
  'strain-looks-like-percent': {
    message: 'Eine Dehnung von {strain} bei einer Steigung von {slope} MPa passt zu keinem Metall: Die Dehnung liegt möglicherweise in % vor, wo ein Verhältnis erwartet wurde.',
    remedy: 'Beim Einlesen der Datei die Einheit der Dehnung angeben.',
  },
  'record-starts-late': {
    message: 'Schon der erste Messpunkt trägt {share} % der Höchstkraft: Der Beginn der Belastung fehlt.',
    remedy: 'Den Datenlogger vor der Belastung starten; der Nullpunkt der Kraft lässt sich nicht prüfen.',
  },
  'zero-drift': {
    message: 'Nach dem Bruch weicht die Kraftanzeige um {force} N ({share} % der Höchstkraft) vom Nullpunkt vor dem Versuch ab.',
    remedy: 'Den Nullpunkt des Kraftkanals vor und nach jedem Versuch prüfen; jede Kraft trägt diesen Zweifel.',
  },
  'repair-without-effect': { message: 'Die Korrektur {repair} wurde verlangt und änderte nichts: {why}.', remedy: 'Sie weglassen, oder in der Prüfung der Aufzeichnung nachsehen, welche Korrekturen etwas bewirken würden.' },
  'tail-after-fracture': {
    message: 'Messpunkte nach dem Bruch wurden ausgelassen (Anzahl: {count}); sie dienten zur Prüfung des Nullpunkts.',
    remedy: 'Nichts zu tun.',
  },
  'fracture-not-recorded': {
    message: 'Die Aufzeichnung zeigt keinen plötzlichen Kraftabfall; ihr letzter Messpunkt gilt als Bruch.',
    remedy: 'Bis nach dem Bruch der Probe aufzeichnen; eine abgeschnittene Aufzeichnung ergibt eine zu kleine Dehnung beim Bruch und, wo die Kraft noch stieg, auch eine zu kleine Höchstkraft.',
  },
  'stopped-before-fracture': {
    message: 'Die Aufzeichnung endet vor dem Bruch der Probe, mit der Kraft bei {share} % ihres Höchstwerts.',
    remedy: 'Bis zum Bruch aufzeichnen; die Festigkeit kann dennoch gültig sein, wenn die Höchstkraft überschritten wurde.',
  },
  'maximum-at-end': {
    message: 'Die höchste Kraft liegt am Ende der Aufzeichnung: Der Versuch oder seine Aufzeichnung wurde vorzeitig beendet, oder die Probe brach bei der Höchstkraft.',
    remedy: 'Angeben, was zutrifft, durch Messen der gebrochenen Probe (Lu, Su); die Festigkeit einer Probe, die dort nicht brach, ist nur mindestens so groß, und Dehnungen bei Höchstkraft sind unbekannt.',
  },
  'maximum-is-spike': {
    message: 'Das Maximum ist ein einzelner Messpunkt, der {excess} MPa über seinen Nachbarn liegt.',
    remedy: 'Vor der Angabe der Festigkeit das Signal auf eine Störspitze prüfen.',
  },
  'few-points-in-elastic-part': {
    message: 'Die elastische Gerade beruht auf wenigen Messpunkten: {points}, gewünscht sind {wanted}.',
    remedy: 'Schneller aufzeichnen oder langsamer belasten.',
  },
  'modulus-of-few-points': {
    message: 'Die elastische Gerade beruht auf {points} Messpunkten, weniger als den {least}, die ein Modul braucht: E wird nicht angegeben.',
    remedy: 'Im elastischen Bereich schneller aufzeichnen oder langsamer belasten.',
  },
  'modulus-of-scatter': {
    message: 'Die Steigung hat einen relativen Standardfehler von {error} %, mehr als die {limit} %, die ein Modul haben darf: E wird nicht angegeben.',
    remedy: 'Rauschen verringern oder im elastischen Bereich mehr Messpunkte aufzeichnen; gewünscht sind höchstens 1 %. Was von der Geraden aus zählt, Nullpunkt und Spannungen am Versatz, ist ebenso unsicher.',
  },
  'sampling-slow-for-yield': {
    message: 'Bei einer Abtastrate von {frequency} je Sekunde und einer Spannungsgeschwindigkeit von {rate} MPa/s kann die obere Streckgrenze um bis zu {loss} MPa zu niedrig sein.',
    remedy: 'Im Bereich der Streckgrenze schneller aufzeichnen oder langsamer belasten.',
  },
  'extension-goes-back': {
    message: 'Signal {column}: geht {count}-mal zurück, um höchstens {largest} {unit}.',
    remedy: 'Ursache ist Spiel, ein Rücklauf des Antriebs oder ein sich entlastender Prüfrahmen; Gerade und Schnittpunkte berücksichtigen es.',
  },
  'extensometer-taken-off': {
    message: 'Längenänderungsaufnehmer, Signal {column}: endet bei Messpunkt {sample} mit {reading} {unit}.',
    remedy: 'Nichts zu tun; danach hat die Dehnung eine andere Grundlage.',
  },
  'extensometer-stands': {
    message: 'Längenänderungsaufnehmer, Signal {column}: steht ab Messpunkt {sample} bei etwa {reading} {unit} still, während der Versuch weitergeht; er wurde abgenommen oder war am Ende seines Wegs und zählt nur bis dorthin.',
    remedy: 'Das Abnehmen im Protokoll vermerken; danach kommt die Dehnung aus dem Traversenweg oder fehlt, wo es keinen gibt.',
  },
  'extensometer-falls-back': {
    message: 'Längenänderungsaufnehmer, Signal {column}: fällt bei Messpunkt {sample} von {reading} {unit} um mehr zurück, als die Probe es kann, und bleibt darunter; er wurde abgenommen, ist gerutscht oder wurde neu genullt und zählt nur bis dorthin.',
    remedy: 'Während des Versuchs nicht nullen; danach kommt die Dehnung aus dem Traversenweg oder fehlt, wo es keinen gibt. Die Teile nur dann verbinden (`joinJumps`), wenn es so war.',
  },
  'travel-carries-on': {
    message: 'Ab einer Dehnung von {strain} wird die Kurve mit dem Traversenweg über {length} mm fortgesetzt.',
    remedy: 'Ab Beginn der Einschnürung unterscheiden sich die beiden Grundlagen; Dehnungen jenseits davon sind Schätzwerte.',
  },
  pause: {
    message: 'Die Traverse stand bei einer Dehnung von {strain} für {duration} s still; die Spannung ging von {from} auf {to} MPa.',
    remedy: 'Ein Kraftabfall bei stillstehender Traverse ist Relaxation, niemals Fließen.',
  },
  'pauses-many': {
    message: 'Die Traverse stand {count}-mal still, zusammen {total} s, von Messpunkt {first} bis {last}; die längste Pause dauert {duration} s bei einer Dehnung von {strain}.',
    remedy: 'Hübe einer Handpumpe machen Pausen; den Fließbereich in einem Hub durchfahren oder gleichmäßiger pumpen.',
  },
  'pause-near-yield': {
    message: 'Pausen innerhalb von 0,2 % Dehnung um {symbol}: {count}, die längste {duration} s.',
    remedy: 'Den Fließbereich ohne Halt durchfahren; den Versuch wiederholen, wenn dieser Wert entscheidet.',
  },
  'uneven-loading': {
    message: 'Die Geschwindigkeit schwankt im elastischen Auswertefenster um {variation} % (Standardabweichung durch Mittelwert).',
    remedy: 'In gleichmäßigen Hüben oder Umdrehungen belasten; siehe das Bild der Geschwindigkeit über der Zeit.',
  },
  // piece
  'gauge-length-not-proportional': {
    message: 'Die Anfangsmesslänge {length} mm weicht um {deviation} % von 5,65√S0 = {proportional} mm ab: A ist mit einem Index anzugeben.',
    remedy: 'A mit der Anfangsmesslänge als Index schreiben (A80mm), bei 11,3√S0 mit dem Faktor (A11,3), oder nach ISO 2566 innerhalb der dortigen Grenzen umrechnen.',
  },
  'parallel-length-assumed': {
    message: 'Es wurde keine Versuchslänge angegeben; an ihrer Stelle steht die Anfangsmesslänge {length} mm.',
    remedy: 'Die Versuchslänge angeben: Jede plastische Dehnung aus dem Traversenweg bezieht sich auf sie.',
  },
  'parallel-length-short': {
    message: 'Die Versuchslänge {length} mm ist kürzer als die Mindestlänge {least} mm für diesen Querschnitt und diese Anfangsmesslänge.',
    remedy: 'Die Versuchslänge mindestens so lang ausführen.',
  },
  'extensometer-length-unsuited': {
    message: 'Eine Extensometer-Messlänge von {length} mm liegt nicht zwischen {least} und {most} mm, der halben Anfangsmesslänge und neun Zehnteln der Versuchslänge.',
    remedy: 'Eine Messlänge in diesem Bereich wählen; für Dehnungen bei und nach der Höchstkraft etwa die Anfangsmesslänge.',
  },
  'section-small': {
    message: 'Das Maß {dimension} = {value} mm liegt unter {limit} mm: Es gilt ein anderer Anhang der Norm.',
    remedy: 'Den Anhang für dünne Erzeugnisse oder für Draht anwenden.',
  },
  'section-wide': {
    message: 'Das Verhältnis von Breite zu Dicke beträgt {ratio} und liegt über 8.',
    remedy: 'Schmale Proben schnüren gleichmäßiger ein; die Maße zusammen mit A und Z angeben.',
  },
  'section-spread': {
    message: 'Die Ablesungen des Querschnitts streuen um {spread} % ihres Mittelwerts.',
    remedy: 'Erneut messen; über 0,5 % sind die Probe oder die Ablesungen ungleichmäßig.',
  },
  'section-taper': {
    message: 'Der Querschnitt ändert sich von einem Ende zum anderen um {taper} %.',
    remedy: 'Die Bearbeitung prüfen; die Probe bricht an ihrem kleinsten Querschnitt.',
  },
  'few-section-readings': {
    message: 'Der Querschnitt beruht auf wenigen Ablesungen je Maß: {readings}.',
    remedy: 'An mindestens drei Stellen messen, Rundproben in zwei Richtungen.',
  },
  'after-fracture-missing': {
    message: '{symbol} wurde nicht bestimmt; es fehlt: {missing}.',
    remedy: 'Die Bruchstücke aneinanderfügen und die Messlänge messen; die Einschnürung in zwei Richtungen messen.',
  },
  'after-fracture-larger': {
    message: '{what} nach dem Bruch: {after}; das passt nicht zum Ausgangswert {before}.',
    remedy: 'Die Ablesungen prüfen: Die Messlänge nimmt zu, der Querschnitt nimmt ab.',
  },
  'reduction-unusual': {
    message: 'Z = {reduction} % ist neben A = {elongation} % ungewöhnlich.',
    remedy: 'Die Ablesungen nach dem Bruch prüfen; nur reine Metalle und Blei schnüren fast bis auf null ein.',
  },
  'elongation-unlike-travel': {
    message: 'A = {elongation} % nach den Messmarken und {travel} % nach der Kurve passen nicht zusammen.',
    remedy: 'Nach einer falschen Länge, Rutschen in der Einspannung oder einer falschen Einheit suchen.',
  },
  // frame
  'extension-from-travel': {
    message: 'Die Dehnungen sind aus dem Traversenweg bestimmt und nicht, wie die Normen es verlangen, mit einem Längenänderungsaufnehmer.',
    remedy: 'Dies bei jedem dehnungsbezogenen Wert angeben; wo der Wert entscheidet, einen Längenänderungsaufnehmer verwenden.',
  },
  'frame-compliance-removed': {
    message: 'Eine Nachgiebigkeit des Prüfrahmens von {compliance} mm/N wurde abgezogen; sie machte {share} % des Weges im elastischen Bereich aus.',
    remedy: 'Angeben, woher die Nachgiebigkeit stammt, und ihre Unsicherheit: Wo sie fehlt, enthält die Unsicherheit von E sie nicht.',
  },
  'frame-stretches-more-than-piece': {
    message: 'Der Prüfrahmen gibt {ratio}-mal so viel nach wie die Probe: E trägt mindestens das {ratio}-Fache der relativen Unsicherheit der Nachgiebigkeit. Wo diese nicht angegeben ist, enthält die Unsicherheit von E sie nicht.',
    remedy: 'Für E einen Längenänderungsaufnehmer verwenden.',
  },
  'modulus-includes-frame-compliance': {
    message: 'Die Dehnungen sind aus dem Traversenweg bestimmt und nicht, wie die Normen es verlangen, an der Probe: Die Steigung {slope} MPa ist die von Prüfrahmen und Probe zusammen, und E wird nicht angegeben. Was gesamte Dehnung zählt (im Zugversuch Agt, At), enthält die Nachgiebigkeit des Prüfrahmens mit; was plastische zählt, nicht.',
    remedy: 'Die Nachgiebigkeit des Prüfrahmens angeben oder einen Längenänderungsaufnehmer verwenden; den Traversenweg bei jedem dehnungsbezogenen Wert nennen. Eine Spannung am Versatz von der eigenen Steigung der Kurve bleibt richtig.',
  },
  'compliance-too-large': {
    message: 'Die angegebene Nachgiebigkeit des Prüfrahmens, {compliance} mm/N, ist {share} % der Bewegung, die der Traversenweg zeigt: Für die Probe bleibt nichts übrig. Sie wurde nicht abgezogen; was auf dem Traversenweg beruht, gilt für Prüfrahmen und Probe zusammen.',
    remedy: 'Sie in mm/N angeben (20 µm/kN sind 2e-5 mm/N) oder sie mit den Einspannungen der Prüfung neu messen.',
  },
  'compliance-vanishing': {
    message: 'Die angegebene Nachgiebigkeit des Prüfrahmens, {compliance} mm/N, nimmt nur {share} % der Bewegung im elastischen Teil heraus: Die Steigung ist die von Prüfrahmen und Probe zusammen, und E wird nicht angegeben.',
    remedy: 'Sie in mm/N angeben (20 µm/kN sind 2e-5 mm/N) oder sie mit den Einspannungen der Prüfung messen.',
  },
  'displacement-steps-coarse': {
    message: 'Ein Schritt der Weganzeige entspricht {share} % des Dehnungsversatzes von {symbol}.',
    remedy: 'Einen feineren Wegaufnehmer verwenden: Gewünscht ist ein Zehntel des Dehnungsversatzes.',
  },
  // evaluation
  'window-bound-eased': {
    message: 'Kein elastisches Auswertefenster hält alle Grenzen ein ({why}); gelockert wurde: {bound}.',
    remedy: 'Bei zu wenigen Messpunkten im elastischen Bereich schneller aufzeichnen; sonst kleinere Anteile verlangen oder das Auswertefenster selbst wählen.',
  },
  'no-linear-part': {
    message: 'Die Kurve hat keinen erkennbaren geradlinigen Teil ({why}). E wird nicht angegeben, und was auf der Geraden beruht, ist unsicher: {symbols}.',
    remedy: 'E aus einer Entlastungsgeraden oder nach einem anderen Verfahren bestimmen. Wo die Kurve gekrümmt ist, ist ihre Gerade zu flach und eine Dehngrenze zu groß: eine Spannung bei einer gesamten Dehnung angeben und Dehnungen als Schätzwerte lesen. Wo das Rauschen die Auswertefenster auseinandertreibt, ruhiger aufzeichnen.',
  },
  'window-not-linear': {
    message: 'Das angegebene Auswertefenster ist kein geradliniger Teil ({why}), wie auch immer die übrige Kurve verläuft. E wird nicht angegeben, und was auf seiner Geraden beruht, ist unsicher: {symbols}.',
    remedy: 'Ein anderes Auswertefenster angeben oder die Wahl der Suche überlassen.',
  },
  'linear-part-unknown': {
    message: 'Ob die elastische Gerade auf einem geradlinigen Teil beruht, ist nicht bekannt: Ihre {points} Messpunkte mit {strains} verschiedenen Dehnungen zeigen keine Krümmung, und es gibt kein anderes Auswertefenster zum Vergleich. E wird nicht angegeben.',
    remedy: 'Im elastischen Bereich mehr Messpunkte und feinere Dehnungen aufzeichnen.',
  },
  'slope-over-slip': {
    message: 'Der Längenänderungsaufnehmer ist im elastischen Auswertefenster gerutscht (bei Messpunkt {sample}): dort zusammengefügt hätte die Gerade {joined} MPa, das Rutschen ändert ihre Steigung also um {change} %; E wird nicht angegeben.',
    remedy: 'Die Teile zusammenfügen (`joinJumps`) oder ein Fenster ohne das Rutschen angeben; Spannungen am Versatz von dieser Geraden tragen denselben Fehler.',
  },
  'slope-above-others': {
    message: 'Die Steigung, {slope} MPa, liegt über denen aller anderen Fenster, {lowest} bis {highest} MPa, und um mehr, als Rauschen erklärt: Entweder kroch eine Schneide im Fenster zurück, dann ist sie zu groß, oder die Probe richtete sich darunter gerade, dann sind die anderen zu klein. Die Unsicherheit von E umfasst beides ({share} %).',
    remedy: 'Den elastischen Bereich ansehen; den Längenänderungsaufnehmer neu ansetzen und wiederholen oder ein Fenster ohne das Kriechen angeben. Aufnehmer auf beiden Seiten zeigen eine krumme Probe.',
  },
  'slope-scatter': {
    message: 'Die Steigung hat einen relativen Standardfehler von {error} %.',
    remedy: 'Das Rauschen verringern oder mehr Messpunkte aufzeichnen; gewünscht sind höchstens 1 %.',
  },
  'strain-noise-flattens': {
    message: 'Rauschen der Dehnung ({noise}) macht die elastische Gerade um etwa {share} % zu flach; die Steigung bleibt, wie sie ist, ihre Unsicherheit enthält dies.',
    remedy: 'Den Längenänderungsaufnehmer oder sein Signal beruhigen oder ein längeres Fenster angeben: die Abflachung geht mit dem Quadrat von Rauschen zu Fenster.',
  },
  'strain-steps-open': {
    message: 'Die elastische Gerade steigt über {steps} Schritte der Dehnungsanzeige (einer ist {step}): Sie lassen ihre Steigung um {share} % offen, was ihre Unsicherheit enthält.',
    remedy: 'Die Dehnung in feineren Schritten ablesen oder ein längeres Fenster angeben: Dreimal so viele Schritte lassen davon ein Fünftel offen.',
  },
  'strain-steps-few': {
    message: 'Die elastische Gerade steigt über {steps} Schritte der Dehnungsanzeige (einer ist {step}): Sie lassen ihre Steigung um {share} % offen, mehr als die {limit} %, bis zu denen E angegeben wird. E wird nicht angegeben.',
    remedy: 'Die Dehnung in feineren Schritten ablesen; Spannungen am Versatz von dieser Geraden tragen denselben Zweifel.',
  },
  'windows-disagree': {
    message: 'Die elastische Gerade, {slope} MPa, ist unsicher: Andere Auswertefenster ({windows}) ergeben Steigungen von {lowest} bis {highest} MPa und Spannungen am Versatz von 0,2 % von {low} bis {high} MPa; die Unsicherheit der Steigung verschiebt diesen Versatz um {share} %.',
    remedy: 'Das Detailbild des elastischen Bereichs ansehen; die Spanne angeben oder das Auswertefenster nennen. Wo die Kurve gekrümmt ist, sind alle diese Steigungen zu klein: Die Spannen schließen den wahren Wert dann nicht ein.',
  },
  'window-slopes-disagree': {
    message: 'Die elastische Gerade, {slope} MPa, ist unsicher: Andere Auswertefenster ({windows}) ergeben Steigungen von {lowest} bis {highest} MPa.',
    remedy: 'Das Detailbild des elastischen Bereichs ansehen; die Spanne angeben oder das Auswertefenster nennen. Wo die Kurve gekrümmt ist, sind alle diese Steigungen zu klein: Die Spannen schließen den wahren Wert dann nicht ein.',
  },
  'windows-fall': {
    message: 'Die elastische Gerade, {slope} MPa, ist unsicher: Andere Auswertefenster ({windows}) ergeben Steigungen bis {highest} MPa, einige auch negative, denn ihre Dehnung geht zurück, während die Spannung steigt.',
    remedy: 'Das Detailbild des elastischen Bereichs und die Bewegung ansehen: ihr Rauschen, ihre Schritte oder eine Nachgiebigkeit, die mehr abzieht, als da ist.',
  },
  'residuals-alike': {
    message: 'Benachbarte Residuen der elastischen Geraden gleichen sich (Vorzeichenläufe: {runs}; bei Zufall zu erwarten: {expected}): Ihr Standardfehler ist zu klein.',
    remedy: 'Ein Filter oder die Abtastrate des Datenloggers korreliert die Messpunkte, oder die Kurve ist im Auswertefenster gekrümmt; den Standardfehler als untere Grenze lesen.',
  },
  'window-bent': {
    message: 'Eine Parabel durch das elastische Auswertefenster ändert ihre Steigung von einem Ende zum anderen um {change} %.',
    remedy: 'Das Detailbild des elastischen Bereichs ansehen: Anlaufbereich oder Fließen reicht in das Auswertefenster hinein.',
  },
  'slope-implausible': {
    message: 'Ein Modul von {slope} MPa liegt außerhalb von {lowest} bis {highest} MPa, dem Bereich der Metalle.',
    remedy: 'Einheiten, Querschnitt (Radius statt Durchmesser?), Länge und Nachgiebigkeit des Prüfrahmens prüfen.',
  },
  'offset-leverage': {
    message: 'Bei einer Hebelwirkung von {leverage} verschiebt die Unsicherheit der Steigung den Dehnungsversatz von {symbol} um {share} % und lässt die Spannung zwischen {low} und {high} MPa offen.',
    remedy: 'Einen Längenänderungsaufnehmer oder eine ruhigere Aufzeichnung verwenden: Die Steigung entscheidet über diesen Wert.',
  },
  'toe-long': {
    message: 'Der Anlaufbereich nimmt eine Dehnung von {shift} ein, {share} % der elastischen Dehnung am oberen Ende des Auswertefensters.',
    remedy: 'Vorlast aufbringen, damit sich die Einspannung setzt; der Ursprung wurde dorthin verschoben, wo die Gerade die Spannung null erreicht.',
  },
  'toe-outside-record': {
    message: 'Die Gerade erreicht die Spannung null bei einer Dehnung von {shift}, vor dem Beginn der Aufzeichnung.',
    remedy: 'Die Aufzeichnung beginnt spät oder anfangs steiler als die Gerade; Nullpunkt und Vorlast prüfen.',
  },
  'no-yield-point': {
    message: 'Keine obere Streckgrenze. Grund: {why}.',
    remedy: 'Die Dehngrenze angeben.',
  },
  'yield-fall-in-pause': {
    message: 'Die Spannung fiel nur, während die Traverse stillstand: Das ist Relaxation, kein Fließen.',
    remedy: 'Den Fließbereich ohne Halt durchfahren.',
  },
  'ends-before-hardening': {
    message: 'Der Versuch endete auf dem Fließplateau, vor der Verfestigung: ReL, {lower} MPa, ist die bis dahin niedrigste Spannung, und Rm, von ISO 6892-1 dort nicht definiert, mindestens die höchste Spannung des Plateaus, nicht ReH, {upper} MPa; Ae, Ag und Agt werden nicht angegeben.',
    remedy: 'ReL als Wert vor der Verfestigung angeben; für Rm, Ae und Agt bis zur Höchstkraft weiterziehen.',
  },
  'no-hardening': {
    message: 'Auf das Fließplateau, auf dem ReL {lower} MPa ist, folgt keine Verfestigung: ISO 6892-1 definiert dort kein Rm. Dafür steht die höchste Spannung des Plateaus, nicht ReH, {upper} MPa; Ae, Ag und Agt werden nicht angegeben.',
    remedy: 'ReH und ReL angeben; wird eine Festigkeit verlangt, vereinbaren, was für sie steht.',
  },
  'lower-yield-in-dips': {
    message: 'ReL, {lowest} MPa, liegt in einem von {count} kurzen Kraftabfällen während des Fließens, aus denen die Kraft jeweils zurückkam; das Rauschen des Wegs verbirgt, ob sie Hübe des Antriebs sind oder vom Werkstoff kommen: ohne sie ist ReL {level} MPa.',
    remedy: 'Das bei ReL und Ae angeben; den Fließbereich in einem Hub durchfahren oder einen Weg aufzeichnen, der zeigt, ob der Antrieb zurückgeht.',
  },
  'falls-slip-or-yield': {
    message: 'Während des Fließens fiel die Kraft {count}-mal plötzlich und kam entlang der elastischen Geraden zurück, insgesamt {way} mm Traversenweg weiter: Rutschen in der Einspannung oder plötzliches Fließen des Metalls, was der Traversenweg nicht unterscheidet. Mit diesen Abfällen ist ReL {lowest} MPa, ohne sie {level} MPa. Ae wird zurückgehalten: {least} bei Rutschen, {most} beim Metall.',
    remedy: 'Die Probenköpfe auf Spuren der Backen ansehen: ist die Probe gerutscht, das Rutschen herausnehmen (`repairs.slips`); sonst gilt ReL. Dehnungen aus dem Traversenweg nach den Abfällen können diesen Weg enthalten. Ein Längenänderungsaufnehmer über die Versuchslänge zeigt es.',
  },
  'few-points-before-proof': {
    message: 'Zwischen dem Ende des elastischen Auswertefensters und {symbol} liegen wenige Messpunkte: {points}.',
    remedy: 'Schneller aufzeichnen: Zwischen weit entfernten Messpunkten verläuft die Sekante unterhalb der Kurve.',
  },
  'several-crossings': {
    message: 'Die Kurve schneidet die Gerade von {symbol} {count}-mal; es zählt der erste bleibende Schnittpunkt.',
    remedy: 'Das Detailbild des elastischen Bereichs ansehen; bei ausgeprägter Streckgrenze zuerst ReH und ReL angeben.',
  },
  'proof-strength-not-reached': {
    message: '{symbol} wurde vor der Höchstkraft nicht erreicht: spröde oder vorzeitig beendet.',
    remedy: 'Nur die Festigkeit angeben.',
  },
  'total-extension-not-reached': {
    message: '{symbol} wurde in der Aufzeichnung nicht erreicht.',
    remedy: 'Den Wert im Prüfbericht weglassen.',
  },
  'maximum-wide': {
    message: 'Die Kraft bleibt über eine Dehnung von {width} innerhalb von {share} % ihres Höchstwerts; Rauschen, Stufen und angegebene Unsicherheiten lassen Agt eine Standardunsicherheit von {uncertainty}.',
    remedy: 'Agt mit seiner Standardunsicherheit angeben; eine Drift der Kraft oder ein anderes Tempo dort verschiebt es innerhalb dieser Breite.',
  },
  'maximum-below-upper-yield': {
    message: 'Das Maximum nach Beginn der Verfestigung, {strength} MPa, liegt unter der oberen Streckgrenze {upper} MPa.',
    remedy: 'Angeben, welcher der beiden Werte mit der Festigkeit gemeint ist.',
  },
  'proportional-limit-by-definition': {
    message: 'Die Proportionalitätsgrenze beträgt je nach Definition {lowest} bis {highest} MPa.',
    remedy: 'Die Definition zusammen mit dem Wert nennen.',
  },
  'stress-rate-outside': {
    message: 'Nach den örtlichen Geschwindigkeiten wurde im elastischen Auswertefenster zu {share} % mit {lowest} bis {highest} MPa/s belastet (ISO 6892-1, Verfahren B), verlangt sind 90 %; die Spannungsgeschwindigkeit beträgt im Median {rate} MPa/s.',
    remedy: 'Mit einer Geschwindigkeit innerhalb dieser Grenzen belasten; siehe das Bild der Geschwindigkeit über der Zeit.',
  },
  'mean-stress-rate-outside': {
    message: 'Die Spannungsgeschwindigkeit über das elastische Auswertefenster beträgt {rate} MPa/s, außerhalb von {lowest} bis {highest} MPa/s (ISO 6892-1, Verfahren B); das Fenster enthält zu wenige Messpunkte, um örtliche Geschwindigkeiten anzugeben.',
    remedy: 'Mit einer Geschwindigkeit innerhalb dieser Grenzen belasten und schneller aufzeichnen.',
  },
  'strain-rate-high': {
    message: 'Die Dehngeschwindigkeit {where} beträgt {rate} 1/s und liegt über {highest} 1/s (ISO 6892-1).',
    remedy: 'Dort langsamer belasten; eine hohe Geschwindigkeit hebt die Streck- und Dehngrenzen an.',
  },
  'strain-rate-low': {
    message: 'Nach den örtlichen Geschwindigkeiten lief das Fließen zu {share} % mit {lowest} 1/s oder schneller ab (ISO 6892-1, Verfahren B, für ReL), verlangt sind 90 %; die Dehngeschwindigkeit beträgt im Mittel {rate} 1/s.',
    remedy: 'Während des Fließens schneller belasten; eine niedrige Geschwindigkeit senkt ReL.',
  },
  'hardening-correlation-low': {
    message: 'Das Verfestigungsgesetz passt nur mit R² = {correlation}.',
    remedy: 'Ein anderes Gesetz passt möglicherweise besser; die wahre Kurve ansehen.',
  },
  'necking-answers-differ': {
    message: 'Die Einschnürung beginnt nach der Kurve bei einer wahren Dehnung von {curve} (u = {uncertainty}), nach dem Verfestigungsgesetz bei {law}.',
    remedy: 'Ein anderes Gesetz folgt dieser Kurve möglicherweise besser; vor dem Extrapolieren die Gesetze vergleichen.',
  },
  'necking-unlike-exponent': {
    message: 'Der Exponent n = {exponent} und die wahre Gleichmaßdehnung {strain} stimmen nicht so überein, wie es Considère verlangt.',
    remedy: 'Das Gesetz gilt nicht bis zur Einschnürung; zu n den Anpassungsbereich angeben.',
  },
  'withheld-after-slip': {
    message: 'Zurückgehalten: {symbols}; die Probe rutschte davor bei Messpunkt {sample} in der Einspannung, und die Dehnung enthielte bis zu {strain} Rutschweg.',
    remedy: 'Das Rutschen vor der Auswertung herausnehmen (`repairs.slips`) oder mit einem Längenänderungsaufnehmer prüfen.',
  },
  'extensions-hold-slip': {
    message: '{symbols}: Die Dehnung enthält den Rutschweg der Probe in der Einspannung bei Messpunkt {sample}; die Werte sind um bis zu {strain} Dehnung zu groß.',
    remedy: 'Das Rutschen vor der Auswertung herausnehmen (`repairs.slips`) oder die Bruchdehnung an der gebrochenen Probe messen.',
  },
  'not-determined': {
    message: 'Nicht bestimmt: {symbol}. Grund: {why}.',
    remedy: 'Siehe den Grund: Diese Aufzeichnung trägt den Wert mit den gewählten Vorgaben nicht.',
  },
  // materials
  'dimension-looks-wrong': {
    message: '{symbol} = {value} {unit} liegt außerhalb des üblichen Bereichs von {low} bis {high} {unit} ({family}). {why}',
    remedy: 'Die Probe erneut messen, mit der Eingabe vergleichen und neu auswerten; korrigiert wurde nichts.',
  },
  'unit-looks-wrong': {
    message: '{symbol} = {value} {unit} liegt außerhalb des üblichen Bereichs von {low} bis {high} {unit} ({family}). {why}',
    remedy: 'Beim Einlesen der Datei die Einheiten der Spalten angeben und neu auswerten; korrigiert wurde nichts.',
  },
  'strain-looks-wrong': {
    message: '{symbol} = {value} {unit} liegt außerhalb des üblichen Bereichs von {low} bis {high} {unit} ({family}). {why}',
    remedy: 'Prüfen, was die Dehnung außer der Probe enthält: Prüfrahmen, Einspannung, Sitz des Längenänderungsaufnehmers.',
  },
  'unlike-family': {
    message: '{symbol} = {value} {unit} liegt außerhalb des üblichen Bereichs von {low} bis {high} {unit} ({family}). {why}',
    remedy: 'Werkstoff und Behandlungszustand prüfen. Übliche Bereiche sind keine Grenzwerte einer Spezifikation.',
  },
  'properties-contradict': {
    message: '{left} = {leftValue} {leftUnit} und {right} = {rightValue} {rightUnit} widersprechen sich: {rule}.',
    remedy: 'Prüfen, wie beide bestimmt wurden; mindestens einer der Werte oder eine Ablesung dahinter ist falsch.',
  },
  // verification
  'force-class-not-reached': {
    message: 'Stufen, die Klasse 1 nicht erreichen: {count} von {steps}, die erste bei {force} N (maßgebend: {term}).',
    remedy: 'Für die dortigen Kräfte keine Übereinstimmung mit ISO 6892-1 angeben; die Ursache suchen, justieren und erneut überprüfen.',
  },
  'rising-force-only': {
    message: 'Die Umkehrspanne von {reversibility} % überschreitet die der Klasse 1: Der Kanal taugt nur für steigende Kräfte.',
    remedy: 'Mit diesem Kanal weder einen Modul aus der Entlastung noch eine Hystereseschleife bestimmen; Dichtungen und Reibung prüfen.',
  },
  'falling-above-rising': {
    message: 'Bei {force} N zeigt die Abwärtsreihe um {excess} N mehr an als die Aufwärtsreihe; die Reibung eines Zylinders bewirkt das Gegenteil.',
    remedy: 'Prüfen, ob die Reihen vertauscht wurden, ob das Referenzgerät gedriftet ist und ob Aufnehmer oder Referenz eine eigene Hysterese haben.',
  },
  'zero-not-verified': {
    message: 'Es wurden keine Nullpunktablesungen angegeben; die Nullpunktabweichung ist daher unbekannt, und die Klasse folgt allein aus den übrigen Kenngrößen.',
    remedy: 'Nach jeder Messreihe die Anzeige ohne Kraft ablesen.',
  },
  'displacement-steps-few': {
    message: 'Kalibrierte Wege: {steps}; wenigste Ablesungen von unten an einem davon: {runs}. Erwartet werden zehn Wege in zwei Messreihen.',
    remedy: 'An etwa zehn Wegen über den genutzten Bereich kalibrieren, jeden zweimal.',
  },
  'verification-steps-few': {
    message: 'Stufen zwischen 20 % und 100 % des Messbereichs: {count}; gewünscht sind fünf.',
    remedy: 'Bei etwa 20, 40, 60, 80 und 100 % des Messbereichs überprüfen, unter 20 % zusätzlich bei 10, 5, 2 und 1 %, sofern dort Kräfte benutzt werden.',
  },
  'range-not-reached': {
    message: 'Die höchste Stufe liegt bei {force} N, {share} % des Messbereichs; darüber ist nichts überprüft.',
    remedy: 'Bis zum Ende des Messbereichs überprüfen oder die höchste Stufe als dessen Ende nennen.',
  },
  'class-range-starts-high': {
    message: 'Klasse 1 gilt erst ab {force} N, {share} % des Messbereichs; nach unten begrenzend: {term}.',
    remedy: 'Die Versuche so planen, dass die Streckgrenze oberhalb dieser Kraft liegt.',
  },
  'friction-negative': {
    message: 'Stufen, an denen sich eine Reibung unter null ergibt: {count}, die niedrigste beträgt {friction} N; Reibung hilft nie.',
    remedy: 'Prüfen, ob Aufwärts- und Abwärtsreihe vertauscht wurden und ob der Nullpunkt des Drucks gedriftet ist.',
  },
  'pointer-above-record': {
    message: 'Der Schleppzeiger zeigt {pointer} N, die Aufzeichnung {recorded} N: {share} % mehr. {cause}.',
    remedy: 'Den überprüften Kanal angeben und den anderen daneben ausdrucken; die Aufzeichnung um ihr Maximum ansehen.',
  },
  'pointer-below-record': {
    message: 'Der Schleppzeiger zeigt {pointer} N, die Aufzeichnung {recorded} N: {share} % weniger. {cause}.',
    remedy: 'Den überprüften Kanal angeben und den anderen daneben ausdrucken; prüfen, ob der Schleppzeiger über die ganze Skala frei läuft.',
  },
  'idle-friction-changed': {
    message: 'Der Leerhub braucht {force} N; zuvor waren es {before} N, eine Änderung um {share} %.',
    remedy: 'Dichtungen, Führungen und Öl prüfen; die Tara der Kraft ist nicht mehr dieselbe.',
  },
  'idle-friction-uneven': {
    message: 'Über den Leerhub schwankt die Reibung um {spread} N bei einem Mittel von {force} N.',
    remedy: 'Nach einer riefigen Zylinderbohrung, einer verbogenen Kolbenstange oder Luft im Öl suchen; `pressureToForce` nimmt eine wegabhängige Tara an.',
  },
  'leak-down-fast': {
    message: 'Im Stillstand fällt die Kraft um {share} % je Minute.',
    remedy: 'Vor Versuchen mit Haltezeiten nach einem undichten Ventil, einer Dichtung oder einer Verschraubung suchen.',
  },
  'leak-down-settles': {
    message: 'Der Druck fiel in der ersten Hälfte um {early} MPa je Minute, in der zweiten um {late} MPa: Öl, Schlauch oder Probe setzten sich noch.',
    remedy: 'Vor dem Ablesen der Leckage warten oder nur die zweite Hälfte auswerten (`from`).',
  },
  'check-out-of-limits': {
    message: 'Kontrolle {index} ergibt {value} und liegt außerhalb der Grenzen {lower} bis {upper}.',
    remedy: 'Die Kontrolle einmal wiederholen; liegt sie weiter außerhalb, die Prüfungen einstellen und die Ursache finden, bevor Ergebnisse herausgegeben werden.',
  },
  'check-jumped': {
    message: 'Zwischen den Kontrollen {before} und {index} änderte sich die Anzeige um {range}, mehr als {limit}.',
    remedy: 'Feststellen, was zwischen beiden geändert wurde: Prüfer, Probe, Öl, Aufnehmer.',
  },
  'check-on-one-side': {
    message: '{count} Kontrollen in Folge, bis Nummer {index}, liegen {side} der Mittellinie.',
    remedy: 'Das Niveau hat sich verschoben: die Ursache suchen und, wenn sich keine findet, die Kraft überprüfen.',
  },
  'check-trend': {
    message: '{count} Kontrollen in Folge, bis Nummer {index}, verlaufen {direction}.',
    remedy: 'Etwas driftet: Die Kraft überprüfen, bevor die Grenzen erreicht sind.',
  },
  'check-few': {
    message: 'Die Grenzen beruhen auf wenigen Kontrollen: {count}; unter 20 sind sie vorläufig.',
    remedy: 'In gleichmäßigen Abständen weiter kontrollieren und die Grenzen ab etwa 20 Kontrollen festlegen.',
  },
  'force-drifted': {
    message: 'Im vorgefundenen Zustand erreicht die Abweichung {error} % bei {force} N (nach der Justierung vom {date} waren es {before} %); seither betroffene Ergebnisse: {count}.',
    remedy: 'Der Zeitpunkt ist unbekannt: Jedes dieser Ergebnisse erneut beurteilen und seine Nutzer unterrichten.',
  },
  'force-outside-certificate': {
    message: 'Das Ergebnis {identity} bei {force} N liegt außerhalb der überprüften Kräfte ({low} bis {high} N).',
    remedy: 'Es für sich beurteilen; die Drift ist dort nicht bekannt.',
  },
  'displacement-class-not-reached': {
    message: 'Stufen, die Klasse 1 nicht erreichen: {count} von {steps}, die erste bei {travel} mm (maßgebend: {term}).',
    remedy: 'Den Kanal nach seinem Vermögen einsetzen: bei jeder Dehnung seine Klasse nennen und Rp mit einem feineren Aufnehmer bestimmen.',
  },
  'displacement-reversal': {
    message: 'Aufwärts- und Abwärtsablesungen unterscheiden sich um bis zu {difference} mm, bei {travel} mm: Spiel oder Reibung im Aufnehmer.',
    remedy: 'Jede Stellung von derselben Seite anfahren; Richtungswechsel in Dehnungsschleifen auslassen.',
  },
  'gauges-disagree': {
    message: 'Die vier Dehnungsmessstreifen weichen um {share} % der mittleren Dehnung von einer Ebene ab.',
    remedy: 'Verdrahtung, k-Faktor und Lage jedes Dehnungsmessstreifens prüfen, bevor der Biegeanteil geglaubt wird.',
  },
  'bending-large': {
    message: 'Der Biegeanteil beträgt {bending} % der mittleren Dehnung: Die Oberfläche fließt bei {share} % der mittleren Spannung, die bei momentfreiem Zug nötig ist.',
    remedy: 'Einspannung und Probe ausrichten, Kugelsitze verwenden und mit kleiner Vorlast geradeziehen; ReH und Proportionalitätsgrenze sind zu niedrig.',
  },
  'compliance-runs-differ': {
    message: 'Die Messreihen unterscheiden sich: Am oberen Ende streuen ihre Nachgiebigkeiten um {share} % des Mittels, mehr als ihre Streuung erklärt.',
    remedy: 'Einspannung, Richtung oder Reibung haben sich zwischen den Messreihen geändert; erneut messen und für steigende und fallende Kraft je eine Nachgiebigkeit angeben.',
  },
  'compliance-curved': {
    message: 'Eine einzige Zahl passt nicht zu diesem Prüfrahmen: Seine Verformung wächst mit der Potenz {exponent} der Kraft und liegt bei einem Fünftel der höchsten Kraft {share} % über der Proportionalität.',
    remedy: 'Eine Tabelle oder ein Potenzgesetz verwenden, oder zwischen den benutzten Kräften messen.',
  },
  'compliance-poorly-determined': {
    message: 'Die Standardunsicherheit der Nachgiebigkeit beträgt {uncertainty} % ihres Werts.',
    remedy: 'Einen steiferen Block oder einen größeren Längenunterschied, mehr Messpunkte und einen Bereich bis zu den Kräften der Versuche verwenden.',
  },
  'force-beyond-compliance': {
    message: 'Messpunkte über {limit} N, wo die Nachgiebigkeit des Prüfrahmens nicht gemessen wurde: {count}; sie wurde bis {force} N mit ihrem Endwert fortgesetzt.',
    remedy: 'Die Nachgiebigkeit bis zu den Kräften der Versuche messen.',
  },
  'window-below-compliance': {
    message: 'Das elastische Auswertefenster beginnt bei {force} N, unter {limit} N, wo die Nachgiebigkeit des Prüfrahmens nicht gemessen wurde.',
    remedy: 'Prüfrahmen sind bei kleiner Kraft weicher: Die Nachgiebigkeit von dort an messen oder das Auswertefenster höher legen.',
  },
  'modulus-carries-compliance': {
    message: 'Allein die Nachgiebigkeit des Prüfrahmens gibt E eine Standardunsicherheit von {uncertainty} %.',
    remedy: 'Einen Längenänderungsaufnehmer oder eine längere oder dünnere Probe verwenden, oder die Nachgiebigkeit genauer messen.',
  },
  // compression and bending
  'signs-turned': {
    message: 'Die Belastung war negativ aufgezeichnet ({columns}); die Vorzeichen wurden umgekehrt, sodass sie positiv zählt.',
    remedy: 'Nichts zu tun; die Spalten selbst wurden nicht verändert.',
  },
  'piece-squat': {
    message: 'Das Verhältnis von Höhe zu Durchmesser beträgt {ratio} und liegt unter {least}: Die Reibung an den Stirnflächen steckt in jeder Spannung.',
    remedy: 'Eine Probe von 0,8 bis 2 Durchmessern Höhe für Lagerwerkstoffe, von 3 für allgemeine Zwecke verwenden (ASTM E9).',
  },
  'piece-slender': {
    message: 'Das Verhältnis von Höhe zu Durchmesser beträgt {ratio} und liegt über {most}: höher, als Druckproben ausgeführt werden.',
    remedy: 'Eine Probe von 8 bis 10 Durchmessern Höhe nur für den Modul, von 3 für Festigkeiten verwenden (ASTM E9).',
  },
  'buckling-near': {
    message: 'Bei einem Verhältnis von Höhe zu Durchmesser von {ratio} erreichte die Kraft das {share}-Fache der Knickkraft nach dem Tangentenmodul, bei einer Stauchung von {strain}.',
    remedy: 'Eine kürzere Probe verwenden oder von dieser nur übernehmen, was unter der Hälfte jener Kraft liegt.',
  },
  buckled: {
    message: 'Bei einer Stauchung von {strain} ({stress} MPa) überschritt die Kraft die Knickkraft nach dem Tangentenmodul einer geraden Probe mit dem Knicklängenbeiwert {endFactor}: Darüber hinaus biegt sich die Probe.',
    remedy: 'Werte jenseits dieser Stauchung dürfen nicht verwendet werden; eine knickende Probe kann seitlich herausschießen. Eine kürzere Probe verwenden.',
  },
  barrelled: {
    message: 'Die Mitte ist {ratio}-mal so breit wie die Enden: Spannungen bei großen Stauchungen enthalten Reibung.',
    remedy: 'Besser schmieren, oder in Stufen belasten und neu schmieren; Spannungen bei kleinen Stauchungen angeben.',
  },
  'ends-wider-than-middle': {
    message: 'Die Enden sind breiter als die Mitte, die das {ratio}fache misst: Zwischen Platten gedrückt baucht eine Probe aus.',
    remedy: 'Prüfen, ob die beiden Durchmesser vertauscht sind; eine Schmiermitteltasche, die die Enden weitet, ist selten.',
  },
  'volume-not-kept': {
    message: 'Nach den Durchmessern nach dem Versuch hat die Probe das {ratio}fache ihres anfänglichen Volumens.',
    remedy: 'Durchmesser und Höhen und ihre Einheiten prüfen: Plastische Stauchung erhält das Volumen.',
  },
  'barrelling-not-measured': {
    message: 'Die Stauchung erreichte {strain}, und die Durchmesser nach dem Versuch wurden nicht angegeben: Die Ausbauchung ist unbekannt.',
    remedy: 'Nach dem Versuch den Durchmesser in der Mitte und an den Enden messen.',
  },
  'height-unlike-record': {
    message: 'Nach der Aufzeichnung verlor die Probe bleibend {recorded} mm an Höhe, nach der Messung {measured} mm.',
    remedy: 'Nachgiebigkeit des Prüfrahmens, Höhe und Nullpunkt des Weges prüfen.',
  },
  'end-friction-not-removed': {
    message: 'Es wurde keine Reibungszahl angegeben: Die Fließkurve enthält die Reibung der Stirnflächen.',
    remedy: 'Die Reibungszahl des Schmierstoffs angeben, oder zwei Höhen prüfen und extrapolieren.',
  },
  'end-friction-removed': {
    message: 'Eine Reibungszahl von {friction} wurde nach Siebel aus der Fließspannung herausgerechnet: {share} % bei der größten Dehnung.',
    remedy: 'Die Reibungszahl und ihre Herkunft angeben; ihre Unsicherheit geht in die Fließspannung ein.',
  },
  'compressive-strength-without-strain': {
    message: 'Die Probe brach nicht: Ein duktiles Metall hat keine Druckfestigkeit, nur Spannungen bei angegebenen Stauchungen.',
    remedy: 'Die Stauchgrenze angeben sowie Spannungen mit ihren Stauchungen.',
  },
  'span-short': {
    message: 'Das Verhältnis von Stützweite zu Höhe beträgt {ratio} und liegt unter {least}: Der Schub vergrößert die Durchbiegung um {share} %, und der Modul ist um ebenso viel zu niedrig.',
    remedy: 'Eine größere Stützweite (16-fache Höhe) verwenden oder den Schubanteil zusammen mit dem Modul angeben.',
  },
  'large-deflection': {
    message: 'Ab einer Spannung von {stress} MPa beträgt die Durchbiegung mehr als {share} % der Stützweite: Die Formeln für kleine Durchbiegungen versagen, und die Reibung an den Auflagern wächst.',
    remedy: 'Jenseits davon weder Spannung noch Dehnung entnehmen, oder eine kleinere Stützweite verwenden.',
  },
  'flexural-stress-nominal': {
    message: 'Jenseits der Fließgrenze ist die Biegespannung ein Nennwert: Bei diesem Querschnitt kann sie bis zum {factor}-Fachen der Randfaserspannung betragen.',
    remedy: 'Nur mit anderen Biegeversuchen am gleichen Querschnitt vergleichen, nicht mit dem Zugversuch.',
  },
  'indentation-not-removed': {
    message: 'Die Eindrückung an Auflagern und Biegestempeln wurde nicht angegeben und steckt noch in der Durchbiegung.',
    remedy: 'Sie an der Probe auf ebener Platte messen, oder 0 angeben, wenn die Nachgiebigkeit des Prüfrahmens sie schon enthält.',
  },
  'chord-unlike-slope': {
    message: 'Die Sekante ergibt {chord} MPa, der geradeste Abschnitt {slope} MPa.',
    remedy: 'Die Kurve ansehen: Zwischen den Dehnungen der Sekante liegt Spiel oder Fließen; bei einem Metall die Steigung verwenden.',
  },
  // shear, Brinell hardness, cupping, unloading loops, broken piece
  'shear-clearance': {
    message: 'Ein Spiel von {clearance} mm ist {share} % der gescherten {dimension} mm: Biegung und Zug mischen sich in die Scherung.',
    remedy: 'Eng passende, scharfe Werkzeuge verwenden; das Spiel zusammen mit dem Wert angeben.',
  },
  'shear-bending': {
    message: 'Die Probe wurde verbogen: Ihre Scherfestigkeit ist nicht die der reinen Scherung.',
    remedy: 'Die Probe bis an die Scherebene abstützen, ein engeres Werkzeug verwenden und den Versuch wiederholen.',
  },
  'shear-ratio-unusual': {
    message: 'Die Scherfestigkeit beträgt das {ratio}-Fache der Zugfestigkeit; üblich ist das {least}- bis {most}-Fache ({family}).',
    remedy: 'Fläche, Zahl der Scherebenen und angegebene Zugfestigkeit prüfen.',
  },
  'no-shear-modulus': {
    message: 'Ein Schubmodul wird nicht abgeleitet: Der Weg enthält neben der Scherung Biegung, Eindrückung und das Werkzeug.',
    remedy: 'Den Schubmodul liefert ein Torsionsversuch.',
  },
  'brinell-indentation-outside': {
    message: 'Eindruck {number}: Sein Durchmesser ist das {ratio}-Fache des Kugeldurchmessers und liegt außerhalb von 0,24 bis 0,60; er zählt nicht.',
    remedy: 'Für diese Kugel eine andere Prüfkraft wählen: einen kleineren Beanspruchungsgrad für ein weiches, einen größeren für ein hartes Metall.',
  },
  'brinell-diameters-differ': {
    message: 'Eindruck {number}: Seine beiden Durchmesser unterscheiden sich um {share} %.',
    remedy: 'Nach einer schrägen Oberfläche oder einer Walzrichtung suchen; über 1 % dies beim Wert angeben (übliche Praxis).',
  },
  'brinell-one-diameter': {
    message: 'Eindruck {number}: Es wurde nur ein Durchmesser abgelesen.',
    remedy: 'Zwei Durchmesser im rechten Winkel ablesen; ein Prozent des Durchmessers sind zwei Prozent der Härte.',
  },
  'brinell-force-not-nominal': {
    message: 'Eindruck {number}: Die Prüfkraft {force} N weicht um {share} % von {nominal} N ab, der Prüfkraft von {designation}; zulässig ist 1 %.',
    remedy: 'Die Prüfkraft auf 1 % an ihren Nennwert heranführen; die Härte wurde mit der tatsächlichen Kraft berechnet.',
  },
  'brinell-force-in-kgf': { message: 'Eindruck {number}: Die Kraft {force} N ist die Zahl von {designation} in kgf; das sind {nominal} N.', remedy: 'Die Kraft in Newton angeben: Die Härte wurde mit der Zahl berechnet, wie sie angegeben ist.' },
  'brinell-indentation-off-scale': { message: 'Eindruck {number} zählt im Mittelwert nicht mit: Seine Kraft liegt {share} % neben der von {designation}, die andere auf 1 % einhalten.', remedy: 'Den Eindruck mit der Kraft der Skala neu setzen.' },
  'brinell-index-unusual': {
    message: 'Eindruck {number}: Eine Kugel von {ball} mm mit {force} N (Beanspruchungsgrad {index}) ist kein Paar der Norm.',
    remedy: 'Eine Kugel von 1; 2,5; 5 oder 10 mm und eine Prüfkraft der Norm für sie wählen; Werte anderer Paare sind nicht vergleichbar.',
  },
  'brinell-too-hard': {
    message: '{hardness} HBW liegen über 650 HBW, wo die Skala endet: Die Kugel selbst gibt nach.',
    remedy: 'Ein anderes Härteprüfverfahren wählen, etwa Vickers oder Rockwell C.',
  },
  'brinell-ball-unsuited': {
    message: 'Eine Kugel von {ball} mm ist zu klein (Werkstoffgruppe {material}); die kleinste hat {least} mm.',
    remedy: 'Mit einer größeren Kugel wiederholen: Der Eindruck muss viele Körner erfassen.',
  },
  'brinell-index-unsuited': {
    message: 'Der Beanspruchungsgrad {index} eignet sich nicht für {hardness} HBW (Werkstoffgruppe {material}; üblich: {usual}).',
    remedy: 'Mit einer Prüfkraft von üblichem Beanspruchungsgrad wiederholen.',
  },
  'brinell-force-unsteady': {
    message: 'Eindruck {number}: Die Prüfkraft änderte sich während des Haltens um {share} %; es zählt die höchste, {force} N.',
    remedy: 'Die Prüfkraft auf 1 % halten: behutsam nachführen, nie darüber hinaus.',
  },
  'brinell-dwell-outside': {
    message: 'Eindruck {number}: Die Einwirkdauer der Prüfkraft betrug {duration} s statt 10 bis 15 s.',
    remedy: '10 bis 15 s halten oder die Dauer angeben: Weiche Metalle kriechen.',
  },
  'brinell-rise-outside': {
    message: 'Eindruck {number}: Die Prüfkraft wurde in {duration} s aufgebracht statt in 2 bis 8 s.',
    remedy: 'Die Prüfkraft stoßfrei in 2 bis 8 s aufbringen.',
  },
  'brinell-dwell-not-found': {
    message: 'Eindruck {number}: In der Aufzeichnung hebt sich kein Abschnitt mit gehaltener Prüfkraft ab.',
    remedy: 'Von vor dem Anstieg bis nach der Entlastung aufzeichnen.',
  },
  'brinell-piece-thin': {
    message: 'Die Probe ist {thickness} mm dick, weniger als das 8-Fache der Eindringtiefe ({least} mm).',
    remedy: 'Eine kleinere Kugel und Prüfkraft wählen; auf der Rückseite darf keine Verformung sichtbar sein.',
  },
  'brinell-near-edge': {
    message: 'Eindruck {number} liegt {distance} mm vom Rand entfernt, weniger als das 2,5-Fache seines Durchmessers ({least} mm).',
    remedy: 'Weiter vom Rand entfernt prüfen.',
  },
  'brinell-near-neighbour': {
    message: 'Eindruck {number} liegt {distance} mm vom nächsten entfernt, weniger als das 3-Fache seines Durchmessers ({least} mm).',
    remedy: 'Weiter von anderen Eindrücken entfernt prüfen: Das Metall ist dort kaltverfestigt.',
  },
  'strength-estimated': {
    message: 'Eine Zugfestigkeit von {strength} MPa ist aus der Härte geschätzt, auf etwa 10 % genau.',
    remedy: 'Niemals ein Bauteil danach annehmen: Wo die Festigkeit entscheidet, einen Zugversuch durchführen.',
  },
  'strength-not-estimated': {
    message: 'Es wird keine Zugfestigkeit geschätzt. Grund: {why}.',
    remedy: 'Einen Zugversuch durchführen.',
  },
  'cupping-crack-not-recorded': {
    message: 'Blechprobe {number}: Die Kraft fällt nach ihrem Maximum nicht um {share} %; die Aufzeichnung enthält keinen Riss, und es wird keine Tiefung angegeben.',
    remedy: 'Belasten, bis der Riss durch das Blech geht, und darüber hinaus aufzeichnen.',
  },
  'cupping-fall-gradual': {
    message: 'Blechprobe {number}: Die Kraft fällt allmählich, über {depth} mm; um so viel ist der Augenblick des Risses unsicher.',
    remedy: 'Die Tiefung über einen Spiegel oder eine Kamera durch die geschlossene Schutzabdeckung beobachten, niemals aus der Belastungsachse, und anhalten, sobald Licht durchscheint; nahe dem Maximum langsamer belasten.',
  },
  'cupping-contact-uncertain': {
    message: 'Blech {number}: Die Kraft steigt allmählich an; die Kugel berührt irgendwo zwischen {earliest} und {latest} mm des Wegs. Die Tiefe zählt ab der Mitte und ist um {doubt} mm unsicher.',
    remedy: 'Den Weg bei der ersten Berührung mit dem Auge oder bei einer kleinen bekannten Kraft ablesen, oder den Napf mit einem Tiefenmaß messen.',
  },
  'readings-differ': {
    message: 'Die Werte von {symbol} liegen zwischen {lowest} und {highest} {unit}: {share} % ihres Mittelwerts, wo {limit} % für einen Werkstoff viel sind (übliche Praxis).',
    remedy: 'Den am weitesten abliegenden ansehen: seine Ablesungen, seinen Ort auf der Probe, seine Aufzeichnung. Keinen ohne Grund weglassen.',
  },
  'cupping-displacement-coarse': {
    message: 'Blechprobe {number}: Ein Schritt der Weganzeige beträgt {step} mm; gewünscht sind 0,1 mm.',
    remedy: 'Einen feineren Wegaufnehmer verwenden.',
  },
  'cupping-frame-included': {
    message: 'Die Tiefung enthält die Verformung des Prüfrahmens, die nicht angegeben wurde.',
    remedy: 'Die Nachgiebigkeit des Prüfrahmens messen, oder die Tiefung mit einem Messgerät.',
  },
  'cupping-sheet-outside': {
    message: 'Eine Blechdicke von {thickness} mm liegt außerhalb von 0,1 bis 2 mm, wofür die Tiefung IE festgelegt ist.',
    remedy: 'Dickeres oder schmales Blech hat eigene Werkzeuge und Formelzeichen; nicht mit IE vergleichen.',
  },
  'cupping-blank-narrow': {
    message: 'Die Blechprobe ist {width} mm breit; gewünscht sind mindestens 90 mm.',
    remedy: 'Breitere Blechproben zuschneiden, damit der Blechhalter ringsum hält.',
  },
  'cupping-holding-force': {
    message: 'Die Blechprobe wurde mit {force} N gehalten statt mit etwa 10 kN.',
    remedy: 'Die Blechhaltekraft auf etwa 10 kN einstellen: Eine lose Blechprobe zieht nach und ergibt eine zu große Tiefung.',
  },
  'cupping-tools-other': {
    message: 'Eine Kugel von {ball} mm und eine Matrize von {die} mm sind nicht die 20 und 27 mm der Tiefung IE.',
    remedy: 'Die Werkzeuge zusammen mit der Tiefung angeben; mit IE ist sie nicht vergleichbar.',
  },
  'cupping-few-blanks': {
    message: 'Zahl der Blechproben, auf denen die Tiefung beruht: {blanks}; gewünscht sind drei oder mehr.',
    remedy: 'Mindestens drei Blechproben prüfen und den Mittelwert angeben.',
  },
  'unloading-refused': {
    message: 'Die Umkehrspanne {reversibility} % liegt über 1,5 %: Die Kraft gilt nur im Anstieg, daher wird aus der Entlastung nichts bestimmt.',
    remedy: 'Die Kraft auch im Abfall überprüfen oder sie an der Probe statt im Öl messen.',
  },
  'reversibility-unknown': {
    message: 'Die Umkehrspanne der Kraft ist nicht bekannt: Die Reibung des Zylinders krümmt und weitet die Schleifen.',
    remedy: 'Die Kraft im Anstieg und im Abfall überprüfen und ihre Umkehrspanne angeben.',
  },
  'unloading-none': {
    message: 'Die Aufzeichnung enthält keine Entlastung. Grund: {why}.',
    remedy: 'Den Antrieb zurückdrehen, bis die Kraft deutlich gefallen ist, und erneut belasten; alles aufzeichnen.',
  },
  'unloading-not-to-zero': {
    message: 'Schleife {number} geht nur bis auf {share} % ihres Höchstwerts zurück; ihre bleibende Dehnung ist dort abgelesen, wo ihre Gerade die Spannung null erreicht.',
    remedy: 'Bis nahe null entlasten, wo die bleibende Dehnung entscheidet.',
  },
  'permanent-set-not-bracketed': {
    message: '{symbol} wird nicht bestimmt: Die bleibenden Dehnungen der Schleifen reichen von {least} bis {most} %.',
    remedy: 'Von einer niedrigeren und von einer höheren Spannung aus entlasten, sodass eine bleibende Dehnung unter und eine über dem Grenzwert liegt.',
  },
  'fracture-outside-middle': {
    message: 'Der Bruch liegt {distance} mm von der nächsten Messmarke entfernt, weniger als ein Drittel der Anfangsmesslänge ({least} mm).',
    remedy: 'A bleibt gültig, wo es seinen Mindestwert erreicht; sonst nach Unterteilung der Messlänge messen oder eine weitere Probe prüfen.',
  },
  'fracture-at-mark': {
    message: 'Die Probe brach an einer Messmarke.',
    remedy: 'Schwächer markieren; A ist zweifelhaft, und die Festigkeit kann zu niedrig sein.',
  },
  'fracture-outside-parallel': {
    message: 'Die Probe brach {place}: A und Z sind nicht die der Versuchslänge, und die Festigkeit ist eine untere Grenze.',
    remedy: 'Übergangsradien, Einspannung und Ausrichtung prüfen und eine weitere Probe prüfen.',
  },
  'elongation-small': {
    message: 'A = {elongation} % liegt unter 5 %: Zwei gewöhnliche Messmarken sind dafür zu grob.',
    remedy: 'Mit feinen Marken messen: angerissene Bögen, unter dem Mikroskop abgelesen.',
  },
  // planning
  'force-near-capacity': {
    message: 'Die größte zu erwartende Kraft, {force} N, beträgt {share} % der Nennkraft von {capacity} N.',
    remedy: 'Einen kleineren Querschnitt oder eine kleinere Prüfkraft wählen; eine Werkstofffamilie begrenzt eine unbekannte Stange nicht.',
  },
  'force-above-capacity': {
    message: 'Die größte zu erwartende Kraft, {force} N, beträgt {share} % der Nennkraft von {capacity} N: Dieser Prüfrahmen darf den Versuch nicht ausführen.',
    remedy: 'Einen kleineren Querschnitt, eine kleinere Prüfkraft oder einen anderen Prüfrahmen wählen; das Druckbegrenzungsventil niemals höher stellen.',
  },
  'force-unverified': {
    message: 'Für den Prüfrahmen wurde kein überprüfter Kraftbereich angegeben.',
    remedy: 'Die Kraft überprüfen lassen und die niedrigste überprüfte Kraft samt Abweichung angeben.',
  },
  'force-below-verified': {
    message: 'Die kleinste maßgebende Kraft, {force} N ({what}), liegt unter {limit} N ({why}).',
    remedy: 'Einen größeren Querschnitt oder eine größere Prüfkraft wählen, oder den unteren Teil des Bereichs überprüfen lassen.',
  },
  'pressure-near-limit': {
    message: 'Der Öldruck würde {pressure} MPa erreichen, {share} % von {limit} MPa ({device}).',
    remedy: 'Einen kleineren Querschnitt oder eine kleinere Prüfkraft wählen; das Druckbegrenzungsventil niemals höher stellen und den Druckmessumformer in seinem Messbereich halten.',
  },
  'travel-near-stroke': {
    message: 'Der Versuch braucht etwa {travel} mm Weg, {share} % des Hubs von {stroke} mm.',
    remedy: 'Spiel vor Versuchsbeginn herausnehmen oder die Probe im Rahmen der Regeln verkürzen.',
  },
  'frame-compliance-unknown': {
    message: 'Die Nachgiebigkeit des Prüfrahmens ist nicht bekannt: Geschwindigkeit, Weg und gespeicherte Energie sind Mindestwerte, und E ist aus dem Traversenweg nicht zu gewinnen.',
    remedy: 'Die Nachgiebigkeit mit einem steifen Block, einem bekannten Stab oder zwei Längen messen, oder einen Längenänderungsaufnehmer verwenden.',
  },
  'oil-volume-unknown': {
    message: 'Das unter Druck stehende Ölvolumen ist nicht bekannt: Die Hübe im elastischen Bereich und die gespeicherte Energie sind Mindestwerte.',
    remedy: 'Zylinder, Leitungen und Schläuche abschätzen; oft braucht das Öl mehr Hübe als der Kolben.',
  },
  'elastic-speed-too-fast-for-yield': {
    message: 'Durch den Fließbereich beibehalten, würde die Geschwindigkeit des elastischen Bereichs die Probe mit {rate} 1/s dehnen, dem {ratio}-Fachen der dort anzustrebenden Dehngeschwindigkeit.',
    remedy: 'Vor der Streckgrenze verlangsamen, wo der Belastungsfahrplan es vorsieht.',
  },
  'elastic-part-quick': {
    message: 'Bei dieser Geschwindigkeit dauert der elastische Bereich bis zum Geschwindigkeitswechsel {time} s: kaum fünf Ablesungen einer Zeigeranzeige.',
    remedy: 'Aufzeichnen, oder das untere Ende der von der Norm zugelassenen Geschwindigkeiten anstreben.',
  },
  'ball-force-error': {
    message: 'Die Kraft kann um {error} % abweichen, die Prüfkraft einer Kugel höchstens um {limit} %.',
    remedy: 'Den Prüfrahmen bei dieser Kraft nach Klasse 1 überprüfen lassen oder eine Kraft wählen, bei der er sie erreicht.',
  },
  'drive-too-fast': {
    message: 'Der Antrieb bräuchte {number} {what} je Minute (Abschnitt: {stage}): Mehr als {limit} von Hand sind schwer gleichmäßig zu halten.',
    remedy: 'Eine niedrigere Geschwindigkeit anstreben, die die Norm zulässt, und sie angeben.',
  },
  'drive-strokes-coarse': {
    message: 'Ein Pumpenhub bewegt die Traverse um {travel} mm, das {ratio}-Fache des Dehnungsversatzes von Rp0.2: Der Fließbeginn fällt in einen einzigen Hub.',
    remedy: 'Den Hebel nach dem elastischen Bereich langsam und nur in Teilhüben bewegen, oder einen Antrieb mit feineren Schritten verwenden.',
  },
  'planned-sampling-slow': {
    message: 'Eine Abtastrate von {rate} je Sekunde liegt unter den {least}, die die Spannungsgeschwindigkeit von {stressRate} MPa/s verlangt: ReH kann um bis zu {loss} MPa zu niedrig sein.',
    remedy: 'Im Bereich der Streckgrenze schneller aufzeichnen oder langsamer belasten.',
  },
  'strain-not-in-accordance': {
    message: '{standard} verlangt einen Längenänderungsaufnehmer: Dehngrenzen und E würden aus dem Traversenweg bestimmt, nicht in Übereinstimmung mit der Norm.',
    remedy: 'Einen Längenänderungsaufnehmer verwenden oder die Abweichung bei jedem Wert angeben.',
  },
  'structural-acceptance': {
    message: 'Mit den Werten soll ein tragendes Teil abgenommen werden: Das kann dieser Plan nicht leisten.',
    remedy: 'Das maßgebende Regelwerk befolgen; es entscheiden ein kompetentes Labor mit überprüfter Prüfmaschine und eine zugelassene oder anderweitig befugte Fachkraft.',
  },
  'planned-index-unusual': {
    message: 'Der Beanspruchungsgrad 0,102 F/D² = {index} ist keiner von {usual}.',
    remedy: 'Für diese Kugel eine Prüfkraft aus der Tabelle wählen.',
  },
  'planned-indentation-outside': {
    message: 'Bei {hardness} HBW würde der Eindruckdurchmesser das {ratio}-Fache des Kugeldurchmessers betragen, außerhalb von 0,24 bis 0,60.',
    remedy: 'Einen anderen Beanspruchungsgrad (Kraft durch Kugeldurchmesser zum Quadrat) wählen.',
  },
  'planned-span-short': {
    message: 'Die Stützweite beträgt das {ratio}-Fache der Stabhöhe: Unter {limit} trägt der Schub zur Durchbiegung bei.',
    remedy: 'Eine größere Stützweite wählen oder E nicht bestimmen.',
  },
  'planned-buckling': {
    message: 'Bei Höhe durch Durchmesser {ratio} kann die Probe ab einer Stauchung von {strain} knicken, vor der geplanten von {planned}.',
    remedy: 'Eine kürzere Probe nehmen, bis 3 Durchmesser, oder früher beenden.',
  },
  'head-weak': {
    message: '{what}: {stress} MPa bei der größten Kraft, gegenüber {limit} MPa, die der Probenkopf tragen darf; das {margin}-Fache des Nötigen.',
    remedy: 'Den Probenkopf größer oder den Querschnitt kleiner ausführen; die Probe muss in ihrer Versuchslänge brechen.',
  },
  'head-too-small': {
    message: 'Der Probenkopf ist {ratio}-mal so groß wie das Querschnittsmaß, unter {least}.',
    remedy: 'Den Probenkopf breiter ausführen; eine Probe, die im Kopf bricht, ist verloren.',
  },
  'grip-short': {
    message: 'Die Einspannung fasst {length} mm des Probenkopfs, weniger als {least} mm.',
    remedy: 'Die Probenköpfe länger ausführen: Bei Keilspannbacken sollen zwei Drittel der Spannflächen fassen, ein Gewinde soll um seinen Durchmesser eingeschraubt sein.',
  },
  'grip-may-slip': {
    message: 'Die Einspannung hält das {margin}-Fache des Nötigen, unter {least}.',
    remedy: 'Die Spannflächen reinigen und schärfen, die Keilrücken fetten, die Spannkraft erhöhen oder den Probenkopf verlängern.',
  },
  'fillet-small': {
    message: 'Der Übergangsradius, {radius} mm, liegt unter {least} mm.',
    remedy: 'Ihn vergrößern: An einem scharfen Absatz beginnt der Bruch.',
  },
  'parallel-length-long': {
    message: 'Die Versuchslänge {length} mm ist {ratio}-mal so lang wie die Anfangsmesslänge {gauge} mm: Die Probe kann außerhalb der Messmarken brechen.',
    remedy: 'Die Versuchslänge verkürzen oder sie auf ganzer Länge in gleiche Abstände unterteilen.',
  },
  'piece-too-short': {
    message: 'Eine Gesamtlänge von {length} mm fasst Versuchslänge, Übergangsradien und Probenköpfe nicht, die zusammen {least} mm brauchen.',
    remedy: 'Den Rohling länger ausführen, oder die Probenköpfe kürzer, soweit die Einspannung es zulässt.',
  },
  'shape-outside-tolerance': {
    message: 'Maß {dimension}: Es schwankt entlang der Probe um {difference} mm, mehr als {limit} mm.',
    remedy: 'Die Probe nacharbeiten, oder sie an mehr Stellen messen und die Abweichung angeben.',
  },
  'size-outside-tolerance': {
    message: 'Maß {dimension}: Es weicht um {difference} mm vom Nennmaß ab, mehr als {limit} mm; der Querschnitt muss gemessen und darf nicht als Nennwert übernommen werden.',
    remedy: 'Die Probe messen und ihren eigenen Querschnitt verwenden.',
  },
  // uncertainty
  'budget-not-linear': {
    message: 'Das Modell ist innerhalb der Unsicherheit der Eingangsgröße {input} gekrümmt: Was das Budget auslässt, beträgt {share} % der Varianz.',
    remedy: 'Mit einer Monte-Carlo-Simulation prüfen und deren Intervall angeben; die Verteilung ist wahrscheinlich schief.',
  },
  'one-term-dominates': {
    message: 'Eingangsgröße {input}: Sie macht {share} % der Varianz von {symbol} aus.',
    remedy: 'Diese zuerst verbessern; mit einer Monte-Carlo-Simulation prüfen, denn ihre Verteilungsform ist die des Ergebnisses.',
  },
  'few-degrees-of-freedom': {
    message: 'Die Unsicherheit von {symbol} beruht auf wenigen effektiven Freiheitsgraden, {freedom}: Der Erweiterungsfaktor beträgt {factor}.',
    remedy: 'Mehr Ablesungen der bestimmenden Größe nehmen oder eine zusammengefasste Standardabweichung verwenden.',
  },
  'uncertainty-incomplete': {
    message: 'Die Unsicherheiten lassen aus, was nicht angegeben wurde: {missing}.',
    remedy: 'Deren Unsicherheiten angeben; was ausgelassen ist, zählt als exakt.',
  },
  'uncertainty-large': {
    message: 'Eingangsgröße {input}: Ihre Standardunsicherheit beträgt {share} % ihres Wertes.',
    remedy: 'Prüfen, ob Prozent oder eine andere Einheit gemeint war: Relative Unsicherheiten sind Bruchteile (0,005 sind 0,5 %), Längen sind in mm.',
  },
  'zero-uncertainty-large': {
    message: 'Die Standardunsicherheit des Nullpunkts der Kraft beträgt {share} % der größten Kraft.',
    remedy: 'Prüfen, ob eine andere Einheit gemeint war: Sie ist in N, kein Anteil der Kraft.',
  },
  'uncertainty-not-determined': {
    message: 'Keine Unsicherheit angegeben für {symbols}: Wird die Eingangsgröße {input} um einen noch so kleinen Teil ihrer Unsicherheit geändert, so liefert der Versuch keinen Wert.',
    remedy: 'Eine kleinere Unsicherheit dieser Größe angeben, oder eine Monte-Carlo-Simulation rechnen und deren Intervall mit den misslungenen Durchläufen angeben.',
  },
  'noise-decides': {
    message: 'Keine Unsicherheit angegeben für {symbols}: Bei anderem Rauschen derselben Stärke haben die meisten Wiederholungen des Versuchs keinen solchen Wert.',
    remedy: 'Der Wert kann vom Rauschen stammen: nur angeben, wenn die Kurve ihn zeigt. Mit weniger Rauschen aufzeichnen.',
  },
  'budgets-not-linear': {
    message: 'Der Versuch folgt der Eingangsgröße {input} innerhalb ihrer Unsicherheit in einer Kurve: Budgets lassen bis zu {share} % der Varianz aus ({symbols}).',
    remedy: 'Diese mit einer Monte-Carlo-Simulation prüfen und deren Intervalle angeben; die Verteilungen sind wahrscheinlich schief.',
  },
  'budgets-of-few-degrees-of-freedom': {
    message: 'Unsicherheiten beruhen auf wenigen effektiven Freiheitsgraden, mindestens {freedom}: {symbols}.',
    remedy: 'Mehr Ablesungen der bestimmenden Größe nehmen oder eine zusammengefasste Standardabweichung verwenden.',
  },
  'noise-correlated': {
    message: 'Das Rauschen benachbarter Messpunkte hängt zusammen (Korrelation {correlation}): Das elastische Auswertefenster folgt ihm, und seine Wahl ist eine Zeile der Budgets.',
    remedy: 'Die Quelle der langsamen Störung finden; das Auswertefenster selbst wählen, und zwar breit.',
  },
  'budget-not-validated': {
    message: 'Budget und Monte-Carlo-Simulation unterscheiden sich an den Enden des Intervalls von {symbol} um {low} und {high} {unit}, wo {tolerance} {unit} zulässig ist.',
    remedy: 'Das Intervall der Monte-Carlo-Simulation angeben; für das Budget ist das Modell nicht linear oder die Verteilung nicht normal genug.',
  },
  'budgets-not-validated': {
    message: 'Budget und Monte-Carlo-Simulation unterscheiden sich an den Enden des Intervalls um mehr als zulässig: {symbols}.',
    remedy: 'Für diese die Intervalle der Monte-Carlo-Simulation angeben; für das Budget ist das Modell nicht linear oder die Verteilung nicht normal genug.',
  },
  'budget-trials-few': {
    message: 'Die Ziehungen sind zu wenige, um zu sagen, ob das Intervall des Budgets gilt: {symbols}.',
    remedy: 'Wo es darauf ankommt, mehr Ziehungen machen; viermal so viele kennen die Enden doppelt so gut.',
  },
  'monte-carlo-not-converged': {
    message: 'Die Monte-Carlo-Simulation endete nach {trials} Durchläufen, bevor ihre Ergebnisse innerhalb von {tolerance} stabil waren.',
    remedy: 'Mehr Durchläufe zulassen oder weniger Stellen verlangen.',
  },
  'monte-carlo-no-variance': {
    message: '{input} hat {freedom} Freiheitsgrade. Mit 2 oder weniger, wie bei drei Ablesungen, haben die Ziehungen keine Varianz: Sie geben {symbol} keine Standardunsicherheit, aber ein Intervall.',
    remedy: 'Das Intervall angeben und die Standardunsicherheit des Budgets; vier Ablesungen oder eine zusammengefasste Standardabweichung geben den Ziehungen eine Varianz.',
  },
  'monte-carlo-trials-few': {
    message: '{trials} Ziehungen sind wenig für ein Intervall von {coverage} %: Seine Enden sind ab {least} bekannt.',
    remedy: 'Mehr Ziehungen machen oder ihre Zahl weglassen: Dann endet der Lauf, wenn seine Ergebnisse stabil sind.',
  },
  'monte-carlo-trials-failed': {
    message: 'Durchläufe der Monte-Carlo-Simulation ohne Wert für {symbol}: {failed} von {trials}.',
    remedy: 'Die Verteilung ist die der übrigen; prüfen, ob es den Wert innerhalb seiner Unsicherheit überhaupt gibt.',
  },
  // several tests, decisions
  'few-replicates': {
    message: 'Aus zwei Ergebnissen wird nur die Spannweite angegeben: {symbols}.',
    remedy: 'Mindestens drei Proben prüfen; eine Standardabweichung aus zwei Werten sagt nichts aus.',
  },
  'esd-few-values': {
    message: '{n} Werte: Die Grenzen dieses Tests auf mehrere Ausreißer sind ab 25 Werten gut und ab 15 brauchbar.',
    remedy: 'Mit Grubbs nach einem Ausreißer suchen oder mehr Proben prüfen.',
  },
  'variation-above-usual': {
    message: '{symbol} streut um {variation} %, mehr als das Dreifache der innerhalb eines Labors üblichen {usual} %.',
    remedy: 'Die Ursache in Bearbeitung, Einspannung, Messung oder Kraft suchen, bevor der Werkstoff beschuldigt wird.',
  },
  'replicate-outlying': {
    message: '{symbol} aus Versuch {test} ({value} {unit}) liegt weiter außen, als der Zufall erklärt: G = {statistic}, über {limit}.',
    remedy: 'Eine physikalische Ursache suchen und festhalten; ohne sie bleibt der Wert bestehen.',
  },
  'replicate-odd': {
    message: 'Versuch {test} liegt in mehreren Größen weiter außen, als der Zufall erklärt: {symbols}; am weitesten bei {symbol}, {value} {unit} (G = {statistic}, über {limit}).',
    remedy: 'Mehrere Größen zugleich weisen auf das hin, was sie gemeinsam haben: Querschnitt, Kraft oder eine Länge dieser Probe. Die Ursache aufschreiben; ohne Ursache bleiben die Werte.',
  },
  'replicates-repeated': {
    message: 'Eine Aufzeichnung ist als mehrere Versuche angegeben: {tests}. Sie zählt {count}-mal, also ist n zu groß und die Streuung zu klein.',
    remedy: 'Die Kopien weglassen; mehrere Auswertungen einer Aufzeichnung sind keine Wiederholungen.',
  },
  'replicates-read-alike': {
    message: 'Die Versuche {tests} haben dieselben Ablesungen, {count}-mal: zufällig gleich, was bei Ablesungen mit wenigen Stellen vorkommt, oder ein Versuch mehrmals angegeben.',
    remedy: 'Weglassen, was eine Kopie ist; Ablesungen an verschiedenen Proben bleiben.',
  },
  'replicates-mixed': {
    message: 'Die Versuche unterscheiden sich ({what}: {values}) und wurden dennoch zusammengefasst.',
    remedy: 'Ihre Streuung enthält auch diesen Unterschied; wo es darauf ankommt, nur Gleiches mit Gleichem zusammenfassen.',
  },
  'replicates-not-pooled': {
    message: '{symbols}: nicht zusammengefasst, denn die Versuche unterscheiden sich ({what}: {values}).',
    remedy: 'Gleiches mit Gleichem zusammenfassen (Bruchdehnungen nach Umrechnung gemäß ISO 2566), oder das Zusammenfassen in den Optionen verlangen.',
  },
  'replicates-at-least': {
    message: '{symbols}: bei {count} der {total} Versuche ({tests}) weggelassen, die vor ihrer Höchstkraft endeten; ihre Werte sind nur mindestens so groß.',
    remedy: 'Weitere Proben bis zum Bruch prüfen; ein Mittelwert ohne diese Versuche ist nicht der Mittelwert aller und sagt nichts über die Streuung aller.',
  },
  'group-off-the-mean': {
    message: 'Der Mittelwert der Gruppe {group} weicht ab: h = {h}, jenseits von {limit}.',
    remedy: 'Prüfrahmen, Längen, Einheiten und Ablesungen mit denen der anderen vergleichen; die Ergebnisse behalten.',
  },
  'group-scatters': {
    message: 'Gruppe {group} streut stärker als die anderen: k = {k}, über {limit}.',
    remedy: 'Einspannung, Ablesung und Bearbeitung dieser Gruppe prüfen; die Ergebnisse behalten.',
  },
  'group-variance-outlying': {
    message: 'Gruppe {group} enthält {share} aller Quadrate (Grenze {limit}); Urteil nach dem Test von Cochran: {verdict}.',
    remedy: 'Die Ursache suchen; die Gruppe nur auslassen, wenn eine gefunden und festgehalten ist.',
  },
  'group-mean-outlying': {
    message: 'Der Mittelwert der Gruppe {group} liegt am weitesten ab: G = {statistic} (Grenze {limit}); Urteil nach dem Test von Grubbs: {verdict}.',
    remedy: 'Die Ursache suchen; die Gruppe nur auslassen, wenn eine gefunden und festgehalten ist.',
  },
  'limit-within-uncertainty': {
    message: '{symbol} liegt {distance} {unit} von seinem Grenzwert entfernt, innerhalb seiner erweiterten Unsicherheit {uncertainty} {unit}: Nach der Unsicherheit allein kann der Wert auf beiden Seiten liegen.',
    remedy: 'Die Entscheidungsregel zusammen mit dem Urteil nennen; wo es darauf ankommt, mehr Proben prüfen oder genauer messen.',
  },
  'limit-of-other-size': {
    message: '{symbol} ist {value} {unit}, der Grenzwert {limit} {unit}: Das eine ist das {ratio}fache des anderen, als stünden sie in verschiedenen Einheiten.',
    remedy: 'Den Grenzwert in der Einheit des Werts angeben: N, mm, MPa, Anteile als Verhältnis (0,22 oder 22 %, nicht 22).',
  },
  'acceptance-zone-empty': {
    message: 'Schutzbänder von {guard} {unit} auf beiden Seiten lassen zwischen {lower} und {upper} {unit} nichts übrig: Kein Wert von {symbol} kann bestehen.',
    remedy: 'Genauer messen oder mehr Proben prüfen, bis die Schutzbänder zwischen die Grenzwerte passen, oder vor der Prüfung eine andere Regel vereinbaren.',
  },
  'guard-of-two-limits': {
    message: '{symbol} besteht, mit einem Risiko von {risk} %: Das Schutzband hält an jeder Grenze {one} % ein, und beide Grenzen sind nah.',
    remedy: 'War das Risiko an einer Grenze als gesamtes Risiko vereinbart, ein breiteres Schutzband verlangen (guardFactor) oder genauer messen.',
  },
  'rounding-decides': {
    message: 'Die Rundung entscheidet: {symbol} wurde als {compared} {unit} verglichen; {value} {unit}, wie gemessen, ergeben das andere Urteil.',
    remedy: 'Das mit dem Urteil angeben: Die Rundung gehört zur vereinbarten Regel, das Risiko gilt für den Messwert.',
  },
  'decision-without-uncertainty': {
    message: 'Über {symbol} wurde ohne dessen Unsicherheit entschieden: Das Irrtumsrisiko ist unbekannt.',
    remedy: 'Die Unsicherheit bestimmen; ohne sie ist nur die einfache Annahme möglich.',
  },
  'decision-on-travel': {
    message: '{symbol} beruht auf dem Traversenweg: Das Urteil gilt unter der Bedingung, dass ein Längenänderungsaufnehmer es bestätigt.',
    remedy: 'Mit einem Längenänderungsaufnehmer wiederholen, bevor der Wert zur Abnahme dient.',
  },
  'decision-without-hardening': {
    message: '{symbol} gehört zur höchsten Spannung des Fließplateaus: Darauf folgt keine Verfestigung, und ISO 6892-1 definiert dort kein Rm.',
    remedy: 'Vereinbaren, was bei einem solchen Werkstoff für die Festigkeit steht, bevor der Wert zur Abnahme dient.',
  },
  'decision-for-structure': {
    message: '{symbol} ist für eine tragende Verwendung bestimmt: Das Urteil gilt unter der Bedingung, dass ein qualifiziertes Labor und die verantwortliche Ingenieurin oder der verantwortliche Ingenieur es bestätigen.',
    remedy: 'Örtliche Vorschriften und die Regeln zugelassener Fachleute befolgen; ein Versuch im Unterricht ist keine Prüfbescheinigung.',
  },
  'gauge-length-unstated': {
    message: 'Die Anfangsmesslänge von {symbol} ist nicht bekannt; der Grenzwert kann daher für eine andere festgelegt sein.',
    remedy: 'Anfangsmesslänge und Querschnitt zusammen mit dem Wert angeben.',
  },
  'values-disagree': {
    message: '{link}: {left} = {leftValue} {leftUnit} und {right} = {rightValue} {rightUnit} passen nicht zusammen (Toleranz {tolerance} {leftUnit}).',
    remedy: 'Siehe die wahrscheinlichen Ursachen dieses Zusammenhangs; eine der beiden Ablesungen oder die Regel selbst trifft hier nicht zu.',
  },
  'link-one-sided': {
    message: '{link}: {symbol} ist nur mindestens so groß, denn der Versuch endete vor seiner Höchstkraft; der Zusammenhang kann zeigen, dass der Wert zu groß ist, nicht, dass er zu klein ist.',
    remedy: 'Prüfen, bis die Höchstkraft überschritten ist; erst dann lassen sich beide Seiten vergleichen.',
  },
  'compared-record-differs': { message: 'Die beiden Ergebnisse stammen aus verschiedenen Aufzeichnungen ({first} und {second}).', remedy: 'Beim Vergleich zweier Versuche nichts zu tun; war eine Aufzeichnung gemeint, die geänderte Datei suchen.' },
  'compared-piece-differs': { message: 'Die Proben unterscheiden sich in: {names}.', remedy: 'Zuerst die Messwerte der Probe vergleichen; sie verschieben jeden Wert, in den sie eingehen.' },
  'compared-options-differ': { message: 'Die Optionen der beiden Ergebnisse unterscheiden sich in: {names}.', remedy: 'Beide mit denselben Optionen auswerten, wenn die Versuche verglichen werden sollen.' },
  'compared-version-differs': { message: 'Die beiden Ergebnisse stammen von den Versionen {first} und {second}.', remedy: 'Das Änderungsprotokoll sagt, wo sich Zahlen von Version zu Version verschoben haben.' },
  'compared-value-moved': { message: '{symbol} hat sich um {difference} {unit} von {first} {unit} verschoben, obwohl Aufzeichnung, Probe und Optionen gleich sind (Versionen {firstVersion} und {secondVersion}).', remedy: 'Das Änderungsprotokoll sollte die Änderung nennen; innerhalb einer Version gibt dieselbe Eingabe dieselbe Zahl, eines der beiden Ergebnisse wurde also verändert.' },
  'compared-beyond-uncertainty': { message: '{symbol} unterscheidet sich um {times} Standardunsicherheiten, mehr als {limit}: {first} und {second} {unit}.', remedy: 'Eine Ursache in Probe, Rahmen oder Optionen suchen, oder eine Quelle, die in der Unsicherheit fehlt.' },
  'compared-one-lacks': { message: 'Nur Ergebnis {number} der beiden enthält {symbol}.', remedy: 'Die Befunde des anderen Ergebnisses sagen, warum der Wert dort fehlt, oder er wurde nicht verlangt.' },
  'compared-at-least': {
    message: 'Keine Differenz angegeben für: {symbols}. Wo ein Versuch vor seiner Höchstkraft endete (Ergebnis {numbers}), ist der Wert nur mindestens so groß.',
    remedy: 'Versuche vergleichen, die ihre Höchstkraft überschritten haben; eine Schranke sagt nur über eine Seite etwas aus.',
  },
  'calibration-date-missing': { message: 'Der Tag der letzten Überprüfung der Kraft ist nicht angegeben; ihr Alter ist daher unbekannt.', remedy: 'Den Tag des Zertifikats als Jahr-Monat-Tag angeben.' },
  'calibration-age-unknown': { message: 'Die Kraft wurde am {date} überprüft; der Tag des Versuchs ist nicht als Jahr-Monat-Tag angegeben, das Alter der Überprüfung daher unbekannt.', remedy: 'Den Tag des Versuchs als Jahr-Monat-Tag angeben.' },
  'calibration-expired': { message: 'Die Kraft wurde am {date} überprüft, {months} Monate vor dem Versuch; das Überprüfungsintervall beträgt {interval} Monate.', remedy: 'Die Kraft vor dem nächsten Versuch überprüfen und diesen nach den vorgefundenen Abweichungen beurteilen.' },
  'calibration-after-test': { message: 'Die Kraft wurde am {date} überprüft, nach dem Versuch vom {test}: Eine spätere Überprüfung zeigt, was die Kraft jetzt anzeigt.', remedy: 'Die Überprüfung nennen, die am Tag des Versuchs galt; nach den vorgefundenen Abweichungen der späteren beurteilen, was gedriftet sein kann.' },
  'force-outside-verified': { message: '{symbol} liegt bei {force} N; die Kraft wurde von {low} bis {high} N überprüft.', remedy: 'Die Kraft dort überprüfen, wo sie benutzt wird, oder eine größere oder kleinere Probe nehmen; für diesen Wert keine Klasse beanspruchen.' },
  'force-outside-calibration': {
    message: '{symbol} liegt bei {force} N; der Kanal ist nur von {low} bis {high} N kalibriert.',
    remedy: 'Dort kalibrieren, wo die Kraft benutzt wird: von unterhalb des elastischen Auswertefensters bis zur Höchstkraft.',
  },
  'calibration-hardly-used': { message: 'Die höchste Kraft, {force} N, ist {share} % dessen, bis wohin der Kanal kalibriert ist ({high} N): Der Versuch braucht wenig von der Kalibrierung, oder beide stehen in verschiedenen Einheiten (bar statt MPa macht ein Zehntel, kN statt N ein Tausendstel).', remedy: 'Die Einheiten von Aufzeichnung und Kalibrierung vergleichen. Stimmen sie überein, bis zur benutzten Kraft kalibrieren: Zweifel an der Kalibrierung sind Anteile ihrer höchsten Kraft.' },
  'force-class-coarse': { message: 'Die Kraft ist nach Klasse {forceClass} überprüft; die üblichen Prüfnormen verlangen Klasse 1 oder besser.', remedy: 'Keine Übereinstimmung mit ihnen beanspruchen; herausfinden, was die Klasse begrenzt.' },
  'force-class-not-in-uncertainty': { message: 'Die Kraft ist nach Klasse {forceClass} überprüft: Jede Kraft und jede Spannung kann um {share} % abweichen, und keine angegebene Unsicherheit enthält das.', remedy: 'Die Klasse oder die Unsicherheit der Kraft unter den Unsicherheiten des Versuchs angeben oder sie zum Unsicherheitsbudget des Ergebnisses hinzufügen.' },
  'force-class-unlike': { message: 'Die Unsicherheiten rechnen für die Kraft mit Klasse {counted}; überprüft ist sie nach Klasse {forceClass}.', remedy: 'Mit der Klasse des Zertifikats rechnen.' },
  'calibration-outlier': { message: 'Paar {pair} der Kalibrierung, bei {force} N, liegt {off} N neben der Kalibrierung aller anderen (vom Grad {without}; mit ihm Grad {degree}): Es ist ein Ausreißer und wurde nicht herausgenommen.', remedy: 'Nach einem Schreib- oder Ablesefehler suchen und das Paar noch einmal messen; nur aus bekannter Ursache herausnehmen.' },
  'calibration-degree-by-one': { message: 'Grad {degree} der Kalibrierung beruht auf Paar {pair}, bei {force} N: Ohne es genügt Grad {without}.', remedy: 'Dieses Paar und andere in seiner Nähe noch einmal messen; ein einzelnes Paar unterscheidet keinen gekrümmten Kanal von einem Versehen.' },
  'calibration-hysteresis': { message: 'Auf dem Rückweg zeigt die Referenz bei gleicher Anzeige {difference} N mehr als auf dem Hinweg, {share} % der höchsten Kraft und mehr als die Streuung.', remedy: 'Nur mit steigender Kraft kalibrieren, wie auch geprüft wird, oder den Unterschied unter die Unsicherheiten zählen; nach Reibung der Dichtungen suchen.' },
  'calibration-points-few': { message: '{points} Paare bei {readings} Anzeigen lassen neben Grad {degree} nur {freedom} Freiheitsgrade: Die Streuung der Kalibrierung und ein Ausreißer unter ihren Paaren sind kaum bekannt.', remedy: 'Bei mindestens fünf Kräften kalibrieren, bei jeder dreimal.' },
  'calibration-scatter': { message: 'Bei {force} N liegt die Kalibrierung {share} % neben ihrem Paar; ein Kanal der Klasse 1 darf {allowed} % daneben liegen.', remedy: 'Suchen, was streut (Ablesung, Reibung, Referenz), und noch einmal messen; keine bessere Klasse in Anspruch nehmen.' },
  'force-nominal': { message: 'Die Kraft ist Öldruck mal Nennfläche von {area} mm²: Was Dichtungen und Führungen zurückhalten, üblicherweise einige Prozent, zählt als Kraft der Probe, und jede Spannung ist um so viel zu hoch.', remedy: 'Gegen ein Kraftmessgerät kalibrieren; bis dahin einen Wirkungsgrad zusammen mit der Unsicherheit der Kraft oder die Klasse einer überprüften Kraft angeben.' },
  'force-efficiency-doubt': { message: 'Die Kraft ist Öldruck mal Nennfläche von {area} mm² mal Wirkungsgrad {efficiency}, dessen Unsicherheit nicht angegeben ist; die Reibung der Dichtungen ändert sich mit Druck, Verschleiß und Temperatur.', remedy: 'Gegen ein Kraftmessgerät kalibrieren, oder die Unsicherheit der Kraft oder die Klasse einer überprüften Kraft angeben.' },
  'channel-calibration-old': { message: 'Der Kraftkanal wurde am {date} kalibriert, {months} Monate vor dem Versuch; üblich ist höchstens ein Jahr.', remedy: 'Neu kalibrieren, oder eine Überprüfung der Kraft nennen, die am Tag des Versuchs galt.' },
  'compliance-of-other-grips': { message: 'Die Nachgiebigkeit des Prüfrahmens wurde mit der Einspannung „{measured}“ gemessen; dieser Versuch wurde mit „{used}“ durchgeführt.', remedy: 'Die Nachgiebigkeit mit der Einspannung des Versuchs messen: Die Einspannung macht einen großen Teil davon aus.' },
  'compliance-of-other-direction': { message: 'Die Nachgiebigkeit des Prüfrahmens wurde in der Richtung „{measuredDirection}“ gemessen; dieser Versuch belastet den Prüfrahmen in der Richtung „{usedDirection}“.', remedy: 'Die Nachgiebigkeit in der Richtung des Versuchs messen: Andere Teile des Prüfrahmens tragen die Kraft.' },
  'pause-in-elastic-window': { message: 'Der Antrieb stand innerhalb des Auswertefensters der elastischen Geraden still: {count}-mal, am längsten {duration} s bei {strain} mm/mm.', remedy: 'Das Auswertefenster über oder unter die Pause legen oder den elastischen Bereich ohne Halt belasten: Was dort relaxiert, krümmt die Gerade.' },
  'falls-many': { message: 'Auf dem Weg nach oben geht der Antrieb {count}-mal mit der Kraft zurück; der größte Abfall beträgt {fall} N, bei Messpunkt {sample}.', remedy: 'Pumpen, ohne den Kolben zurückgehen zu lassen; Ventil und Pumpe prüfen. Die Auswertung lässt diese Schleifen aus.' },
};
