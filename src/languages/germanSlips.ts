import type { SlipKey } from '../teaching/index.js';
import type { SlipWords } from './Language.js';

const dimensions = 'Den Querschnitt erneut messen und mit der Eingabe und ihrer Einheit vergleichen.';
const forceUnit = 'Die Einheit der Kraftspalte ablesen und eine Kraft mit der Anzeige vergleichen.';
const strainUnit = 'Die Einheit der Dehnungsspalte in der Datei ablesen.';
const extensionUnit = 'Die Einheit der Spalte der Verlängerung oder des Wegs ablesen und ihren letzten Wert mit der Probe vergleichen.';

/** @internal Slips of students in German, by their keys. */
export const germanSlips: Readonly<Record<SlipKey, SlipWords>> = {
  // mistakes that explain properties as well, in their words
  'radius-for-diameter': { slip: 'Der Radius wurde als Durchmesser eingegeben.', advice: dimensions },
  'diameter-doubled': { slip: 'Der doppelte Durchmesser wurde eingegeben.', advice: dimensions },
  'section-a-tenth': { slip: 'Von jedem Maß des Querschnitts wurde ein Zehntel eingegeben.', advice: dimensions },
  'section-tenfold': { slip: 'Jedes Maß des Querschnitts wurde zehnfach eingegeben.', advice: dimensions },
  'section-in-inches': { slip: 'Der Querschnitt wurde in Zoll eingegeben.', advice: dimensions },
  'section-converted-twice': { slip: 'Der Querschnitt in mm wurde für Zoll gehalten und umgerechnet.', advice: dimensions },
  'piece-in-inches': { slip: 'Querschnitt und Längen wurden in Zoll eingegeben.', advice: dimensions },
  'lengths-in-inches': {
    slip: 'Die Längen der Probe wurden in Zoll eingegeben.',
    advice: 'Die eingegebenen Längen und ihre Einheit mit der Probe vergleichen.',
  },
  'force-in-kilonewtons': { slip: 'Die Kraft liegt in kN vor und wurde als N gelesen.', advice: forceUnit },
  'newtons-as-kilonewtons': { slip: 'Die Kraft liegt in N vor und wurde als kN gelesen.', advice: forceUnit },
  'force-in-kilograms-force': { slip: 'Die Kraft liegt in kgf vor und wurde als N gelesen.', advice: forceUnit },
  'newtons-as-kilograms-force': { slip: 'Die Kraft liegt in N vor und wurde als kgf gelesen.', advice: forceUnit },
  'force-in-pounds-force': { slip: 'Die Kraft liegt in lbf vor und wurde als N gelesen.', advice: forceUnit },
  'newtons-as-pounds-force': { slip: 'Die Kraft liegt in N vor und wurde als lbf gelesen.', advice: forceUnit },
  'strain-in-percent': { slip: 'Die Dehnung liegt in % vor und wurde als Verhältnis gelesen.', advice: strainUnit },
  'ratio-as-percent': { slip: 'Die Dehnung ist ein Verhältnis und wurde als % gelesen.', advice: strainUnit },
  'strain-in-microstrain': { slip: 'Die Dehnung liegt in µm/m vor und wurde als Verhältnis gelesen.', advice: strainUnit },
  'extension-in-inches': { slip: 'Die Verlängerung liegt in Zoll vor und wurde als mm gelesen.', advice: extensionUnit },
  'extension-in-micrometres': { slip: 'Die Verlängerung liegt in µm vor und wurde als mm gelesen.', advice: extensionUnit },
  // someone who computes by hand
  'square-for-circle': {
    slip: 'Als Fläche wurde das Quadrat des Durchmessers genommen.',
    advice: 'Ein runder Querschnitt hat die Fläche π d²/4: Der Faktor π/4 fehlt.',
  },
  'area-in-square-centimetres': {
    slip: 'Die Fläche wurde in cm² eingesetzt, die Antwort steht daher in N/cm².',
    advice: 'Die Fläche in mm² einsetzen: N/mm² ist MPa, und 1 cm² sind 100 mm².',
  },
  'area-in-square-metres': {
    slip: 'Die Fläche wurde in m² eingesetzt, die Antwort steht daher in Pa.',
    advice: 'Die Fläche in mm² einsetzen oder Pascal durch eine Million teilen.',
  },
  'answer-in-psi': {
    slip: 'Die Antwort steht in Pfund-Kraft je Quadratzoll.',
    advice: 'Die Antwort in MPa angeben: 1 MPa sind 145,04 psi.',
  },
  'answer-in-gigapascals': { slip: 'Die Antwort steht in GPa.', advice: 'Die Antwort in MPa angeben: 1 GPa sind 1000 MPa.' },
  'percent-for-ratio': {
    slip: 'Es wurde eine Zahl in Prozent angegeben, gefragt ist ein Verhältnis.',
    advice: 'Das Verhältnis ist ein Hundertstel der Zahl in Prozent.',
  },
  'ratio-for-percent': {
    slip: 'Es wurde ein Verhältnis angegeben, gefragt sind Prozent.',
    advice: 'Das Verhältnis mit 100 multiplizieren, um Prozent zu erhalten.',
  },
  // on the way to Rm and Rp0.2
  'final-area': {
    slip: 'Die Höchstkraft wurde durch den Querschnitt nach dem Bruch geteilt.',
    advice: 'Rm bezieht sich auf den Anfangsquerschnitt S0: Die Einschnürung bildet sich erst nach dem Maximum.',
  },
  'force-at-fracture': {
    slip: 'Statt der Höchstkraft wurde die Kraft beim Bruch genommen.',
    advice: 'Die höchste Kraft der Aufzeichnung suchen; eine duktile Probe bricht bei einer kleineren.',
  },
  'true-fracture-stress': {
    slip: 'Die Kraft beim Bruch wurde durch den Querschnitt nach dem Bruch geteilt.',
    advice: 'Das ist die mittlere wahre Spannung beim Bruch. Rm ist die Höchstkraft durch den Anfangsquerschnitt.',
  },
  'true-stress': {
    slip: 'Es wurde die wahre Spannung bei Höchstkraft angegeben.',
    advice: 'Rm ist eine technische Spannung: nicht mit 1 + e multiplizieren.',
  },
  'force-for-stress': { slip: 'Es wurde die Höchstkraft in N angegeben.', advice: 'Die Kraft durch den Anfangsquerschnitt teilen.' },
  'proof-for-maximum': {
    slip: 'Statt der Zugfestigkeit wurde die Dehngrenze angegeben.',
    advice: 'Rm ist die höchste Spannung der ganzen Kurve.',
  },
  'maximum-for-proof': {
    slip: 'Statt der Dehngrenze wurde die Zugfestigkeit angegeben.',
    advice: 'Rp0.2 liegt dort, wo die um 0,2 % versetzte Gerade die Kurve schneidet, nahe dem Knie.',
  },
  'handbook-modulus-on-travel': {
    slip: 'Die versetzte Gerade wurde mit dem Elastizitätsmodul aus dem Tabellenbuch in eine Kurve über dem Weg gezeichnet, in der der Prüfrahmen noch steckt.',
    advice: 'Die Gerade mit der eigenen Steigung der Kurve zeichnen; dann fällt der Prüfrahmen aus dem Versatz heraus.',
  },
  'origin-not-moved': {
    slip: 'Der Versatz wurde vom Nullpunkt des Wegs an gezählt, Spiel eingeschlossen.',
    advice: 'Die elastische Gerade bis zur Spannung null verlängern und den Versatz von dort an zählen.',
  },
  'total-for-plastic': {
    slip: 'Es wurde die Spannung bei 0,2 % gesamter Extension abgelesen.',
    advice: 'Die 0,2 % sind plastisch: durch 0,2 % Dehnung eine Gerade mit der elastischen Steigung zeichnen, keine senkrechte.',
  },
  'offset-ten-times': { slip: 'Die Gerade wurde um 2 % statt um 0,2 % versetzt.', advice: '0,2 % sind als Verhältnis 0,002.' },
  'offset-one-tenth': { slip: 'Die Gerade wurde um 0,02 % statt um 0,2 % versetzt.', advice: '0,2 % sind als Verhältnis 0,002.' },
  // on the way to slopes, extensions and readings of the broken piece
  'frame-left-in': {
    slip: 'Im Weg steckt noch die Verformung des Prüfrahmens.',
    advice: 'Nachgiebigkeit mal Kraft vom Weg abziehen, bevor die Dehnung berechnet wird.',
  },
  'frame-taken-out': {
    slip: 'Der Prüfrahmen wurde aus dem Weg herausgerechnet.',
    advice: 'Gefragt ist die Steigung mE der Kurve, wie sie aufgezeichnet wurde; ohne den Prüfrahmen ist die Steigung E.',
  },
  'gauge-for-parallel-length': {
    slip: 'Die Dehnung wurde über die Anfangsmesslänge L0 gerechnet.',
    advice: 'Der Weg verteilt sich auf die Versuchslänge Lc: durch diese teilen.',
  },
  'secant-to-proof': {
    slip: 'Die Steigung wurde vom Ursprung bis zur Dehngrenze genommen.',
    advice: 'In dieser Sekante steckt plastische Extension: die Gerade nur an den geraden Teil anpassen.',
  },
  'one-point-for-slope': {
    slip: 'Es wurde ein einzelner Punkt geteilt: seine Spannung durch seine Dehnung, vom Nullpunkt des Wegs an gezählt.',
    advice:
      'Vor der Geraden liegt Spiel: die Steigung über den geraden Teil nehmen, einen Zuwachs der Spannung durch einen Zuwachs der Dehnung.',
  },
  'fracture-for-maximum': {
    slip: 'Statt der Extension bei Höchstkraft wurde die beim Bruch angegeben.',
    advice: 'Die Extension bei der höchsten Kraft ablesen; danach wächst nur noch die Einschnürung.',
  },
  'true-strain': {
    slip: 'Es wurde die wahre Dehnung angegeben.',
    advice: 'Extensionen sind technische Dehnungen: keinen Logarithmus bilden.',
  },
  'parallel-for-gauge-length': {
    slip: 'Die Zunahme der Messlänge wurde durch die Versuchslänge geteilt.',
    advice: 'A ist (Lu − L0)/L0, beide zwischen den Messmarken abgelesen.',
  },
  'parallel-length-taken-off': {
    slip: 'Die Versuchslänge wurde für die Anfangsmesslänge gehalten.',
    advice: 'L0 ist der Abstand der Messmarken vor dem Versuch, nicht die Länge des prismatischen Teils der Probe.',
  },
  'final-length-as-base': {
    slip: 'Die Zunahme wurde durch die Messlänge nach dem Bruch geteilt.',
    advice: 'Durch die Anfangsmesslänge L0 teilen.',
  },
  'original-not-taken-off': {
    slip: 'Die Messlänge nach dem Bruch wurde durch die Anfangsmesslänge geteilt, und 1 wurde nicht abgezogen.',
    advice: 'A ist (Lu − L0)/L0.',
  },
  'curve-for-marks': {
    slip: 'Die gesamte Extension beim Bruch wurde aus der Kurve abgelesen.',
    advice:
      'Das ist At über der Versuchslänge, elastischer Anteil enthalten. A wird an den Messmarken der zusammengefügten Bruchstücke gemessen.',
  },
  'travel-for-marks': {
    slip: 'Der ganze Weg bis zum Bruch wurde durch die Anfangsmesslänge geteilt.',
    advice:
      'Der Weg enthält Spiel, Prüfrahmen und die Länge außerhalb der Messmarken. A wird an den Messmarken der zusammengefügten Bruchstücke gemessen.',
  },
  'maximum-for-fracture': {
    slip: 'Es wurde die Extension bei Höchstkraft angegeben.',
    advice: 'Das ist Agt. A wird an den Messmarken der gebrochenen Probe gemessen.',
  },
  'diameter-for-area': {
    slip: 'Es wurde die Abnahme des Durchmessers angegeben.',
    advice: 'Z vergleicht Flächen: die Durchmesser zuerst quadrieren.',
  },
  'final-area-as-base': {
    slip: 'Die Abnahme des Querschnitts wurde durch den Querschnitt nach dem Bruch geteilt.',
    advice: 'Durch den Anfangsquerschnitt S0 teilen.',
  },
  'remaining-area': {
    slip: 'Es wurde der Anteil des Querschnitts angegeben, der noch übrig ist.',
    advice: 'Z ist der Anteil, der verloren ging: (S0 − Su)/S0.',
  },
  'elongation-for-reduction': {
    slip: 'Es wurde die Bruchdehnung angegeben.',
    advice: 'Z vergleicht die Querschnitte vor und nach dem Versuch, nicht Längen.',
  },
};
