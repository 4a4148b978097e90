import type { CautionTag } from '../methods/index.js';

/** @internal Cautions in German, by what they speak of. */
export const germanCautions: Readonly<Record<CautionTag, string>> = {
  force:
    'Vor jedem Aufbringen von Kraft die Schutzabdeckung schließen und eine Schutzbrille tragen; nicht in der Belastungsachse stehen. Prüfrahmen, Öl und Schläuche setzen gespeicherte Energie frei, wenn eine Probe nachgibt; eine ausgedruckte Energie ist ein Mindestwert.',
  guard: 'Unter Last niemals die Schutzabdeckung öffnen oder an ihr vorbeigreifen; Anzeigen von außen ablesen.',
  brittle: 'Harte, spröde und gekerbte Proben schleudern ohne Vorwarnung Bruchstücke.',
  extensometer:
    'Einen Längenänderungsaufnehmer nur bei einer Last abnehmen, bei der die Arbeitsanweisung es erlaubt; Einschnürungen entlastet oder optisch messen.',
  grips: 'Hände aus der Einspannung halten, während sie schließt und während die Probe geradegezogen wird.',
  platens:
    'Nicht zwischen die Druckplatten greifen. Eine Probe unter Druck, die nicht winklig oder nicht mittig steht, kann seitlich herausschießen.',
  column: 'Eine schlanke Probe knickt plötzlich aus und springt heraus; keine berechnete Knickkraft ist eine sichere Last.',
  tool: 'Hände aus dem Werkzeug und aus dem Spalt zwischen ihm und der Probe halten, während es schließt; die Probe nur bei stehendem Antrieb und ohne Kraft einlegen.',
  span: 'Ein gebogener Stab kann von den Auflagern abrutschen oder beim Entlasten zurückfedern; ein harter bricht in zwei Teile, die wegfliegen.',
  shear:
    'Ein abgescherter Stift oder Abschnitt wird aus dem Werkzeug getrieben: einen Fang davorstellen und nicht in seiner Flugbahn stehen.',
  ball: 'Kugeln und harte Proben können unter der Kraft zerspringen: Schutzabdeckung geschlossen, Augen geschützt, und keine ausgebrochene oder angerissene Kugel.',
  blank:
    'Blechproben haben scharfe Kanten, und die gezogene Kuppe hat eine aufgerissene; vollständig entlasten, bevor der Blechhalter geöffnet wird.',
  limits:
    'Nennkraft, Hub und Bereich von Einspannung und Werkzeugen einhalten; das Druckbegrenzungsventil niemals außer Kraft setzen oder höher stellen. Gibt eine Probe bei der höchsten zulässigen Kraft nicht nach, den Druck ablassen und nicht herantreten, bevor er abgebaut ist.',
  oil: 'Den Druck vollständig ablassen, bevor eine Verschraubung oder die Schutzabdeckung geöffnet wird: Ein Ölstrahl kann in die Haut eindringen und ist ein medizinischer Notfall. Öl kann heiß sein, und auf dem Boden macht es ihn rutschig.',
  drive:
    'Der Antrieb kann sich beim Bruch oder beim Entlasten von selbst bewegen: der Anleitung des Prüfrahmens folgen; keine weiten Ärmel, langen offenen Haare oder Handschuhe in seiner Nähe.',
  edges: 'Bruchkanten sind scharf, und die Bruchstelle kann heiß sein.',
  alloys: 'Späne und Staub von Magnesium-, Titan- und Berylliumlegierungen sind eigene Gefahren: Brand oder Vergiftung.',
  heavy:
    'Druckplatten, Werkzeuge und Rohteile sind schwer: sie zu zweit oder mit Hebezeug heben, und den Prüfrahmen auf seiner Werkbank befestigen.',
  wiring: 'Vor Arbeiten am Druckmessumformer, an seiner Verdrahtung oder am Antrieb die Stromversorgung abschalten.',
  decisions:
    'Diese Ergebnisse beschreiben diese Proben. Sie sind keine Bemessungswerte. Entscheidungen über Tragwerke, Druckgeräte, Hebezeuge, Luftfahrzeuge oder medizinische Verwendung richten sich nach dem maßgebenden Regelwerk und obliegen einer zugelassenen oder anderweitig befugten Fachkraft; eine Abnahme erfordert eine überprüfte Prüfmaschine, einen Längenänderungsaufnehmer, wo einer verlangt ist, und ein kompetentes Labor. Örtliches Recht, Vorschriften und die Regeln der Werkstatt gehen allem hier Gesagten vor.',
};
