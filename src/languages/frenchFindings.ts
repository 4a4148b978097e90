import type { FindingCode } from '../base/index.js';
import type { FindingWords } from './Language.js';

/** @internal Findings in French. */
export const frenchFindings: Readonly<Record<FindingCode, FindingWords>> = {
  // record
  'time-missing': {
    message: 'L’enregistrement n’a pas de colonne de temps : les vitesses, les pauses et la régularité de la mise en charge sont donc inconnues.',
    remedy: 'Enregistrer le temps à chaque point de mesure ; aucun pas de temps n’est supposé.',
  },
  'time-not-increasing': {
    message: 'Le temps recule {count} fois, d’abord au point {first} ; les vitesses ne sont pas données.',
    remedy: 'Vérifier l’horloge de l’enregistreur, ou si deux essais se trouvent dans le même fichier.',
  },
  'time-gap': {
    message: 'Lacunes dans le temps : {count}, la plus longue de {longest} s au point {first} ; ailleurs les points se suivent toutes les {usual} s.',
    remedy: 'S’assurer qu’aucune lacune ne tombe sur l’écoulement, la force maximale ou la rupture ; ce qui se passe pendant une pause de l’enregistreur est perdu.',
  },
  'time-unit-changes': {
    message: 'À partir du point {sample}, les pas de temps sont {factor} fois ce qu’ils étaient : deux unités de temps, ou une horloge remise à l’heure.',
    remedy: 'Reconstruire le temps d’après la cadence de l’enregistreur (`rebuildTime`) ou s’en passer ; les vitesses de part et d’autre du changement n’ont pas de sens.',
  },
  'time-coarse': {
    message: '{share} % des points portent le même temps que le précédent : l’horloge avance par pas de {step} s, plus grossiers que l’acquisition.',
    remedy: 'Enregistrer le temps avec plus de chiffres, ou le reconstruire d’après la cadence de l’enregistreur (`rebuildTime`).',
  },
  'time-unit-unlikely': {
    message: '{samples} points en {duration} s, soit un toutes les {usual} s : aucune main ne charge ainsi ; l’unité de temps est peut-être une autre.',
    remedy: 'Indiquer l’unité de temps à la lecture du fichier.',
  },
  'force-sign-reversed': {
    message: 'La force descend à {lowest} N et ne monte qu’à {highest} N : la traction est probablement comptée négativement.',
    remedy: 'Inverser le signe de la force (`reverseSign`) et vérifier le câblage ou la convention de l’enregistreur.',
  },
  'channels-exchanged': {
    message: 'Le déplacement tombe au point {sample}, de {highest} mm au plus, tandis que la force reste à {force} N : force et déplacement sont probablement intervertis.',
    remedy: 'Nommer les colonnes à la lecture du fichier (`columns`), et vérifier les fiches de l’enregistreur.',
  },
  'motion-sign-reversed': {
    message: 'Signal {column} : il va de {first} à {last} {unit} alors que la force augmente ; son signe est inversé.',
    remedy: 'Inverser son signe (`reverseSign`) et vérifier la convention de l’enregistreur.',
  },
  spikes: {
    message: 'Signal {column} : nombre de pics parasites {count} ; le plus grand s’écarte de {largest} {unit} de ses voisins, au point {first}.',
    remedy: 'Ils sont remplacés par la droite entre leurs voisins, sauf si cela est désactivé ; chercher une fiche mal enfoncée ou une perturbation.',
  },
  'signal-drops-out': {
    message: 'Signal {column} : absent à partir du point {first}, puis de nouveau présent ; points sans valeur : {count}.',
    remedy: 'Vérifier la fiche et le câble ; on ne sait rien de l’essai dans l’intervalle.',
  },
  'signal-strays': {
    message: 'Signal {column} : s’écarte d’un saut de sa ligne de {height} {unit} au point {first} et y revient d’un saut ; points concernés : {count}. Il est rare qu’une éprouvette ou un entraînement fasse cela.',
    remedy: 'Une droite les remplace, sauf si cela est désactivé ; on ne sait rien de l’essai dans l’intervalle. Chercher une fiche mal enfoncée, une perturbation ou une main sur le câble.',
  },
  'force-bulges': {
    message: 'La force quitte sa courbe de {height} N au point {first} et y revient ; points concernés : {count}. Tant que le déplacement se poursuit ainsi, ni une éprouvette ni un entraînement ne fait cela.',
    remedy: 'Une droite les remplace, sauf si cela est désactivé ; on ne sait rien de l’essai dans l’intervalle. Chercher un choc contre le bâti, une main sur le câble ou une perturbation du capteur.',
  },
  'signal-noisy': {
    message: 'Signal {column} : le bruit est de {noise} {unit}, soit {share} % de son étendue.',
    remedy: 'Blinder le signal et le mettre à la terre ; chaque valeur porte cette dispersion.',
  },
  'reading-coarse': {
    message: 'Signal {column} : lu par pas de {step} {unit}, soit {counts} pas sur l’essai.',
    remedy: 'Un calibre plus fin de l’enregistreur ou un capteur plus fin donne plus de chiffres ; au-dessous de quelques centaines de pas, la résolution limite ce qu’on en tire : d’une force les résistances, d’un mouvement les déformations et les profondeurs.',
  },
  'motion-saturated': {
    message: 'Signal {column} : il reste à {value} {unit} pendant les {count} derniers points alors que la force continue ; le capteur était probablement en butée.',
    remedy: 'Vérifier la course du capteur ; les déformations sont trop petites à partir de là.',
  },
  'late-tare': {
    message: 'La force a été remise à zéro au point {sample}, de {step} N, alors que rien ne bougeait ; ce qui précède compte à partir d’un autre zéro.',
    remedy: 'Rien à faire ; le zéro se règle avant que l’éprouvette soit serrée aux deux extrémités.',
  },
  'zero-before-loading': {
    message: 'Avant la mise en charge, la voie de force indique {force} N, soit {share} % de son maximum.',
    remedy: 'La retrancher (`tare`) si l’éprouvette n’était tenue qu’à une extrémité ; le zéro se règle avant que l’éprouvette soit serrée aux deux extrémités.',
  },
  'zero-after-fracture': {
    message: 'Après la rupture, la voie de force indique {force} N, soit {share} % de son maximum, et aucune partie avant la mise en charge ne donne le zéro.',
    remedy: 'Enregistrer quelques secondes avant la mise en charge ; chaque force peut porter ce décalage.',
  },
  'grip-slip': {
    message: 'L’éprouvette a glissé dans les mors au point {sample} ; signal {column} : variation de {way} {unit} que la force n’explique pas (la force a baissé de {fall} N).',
    remedy: 'Nettoyer ou changer les mors ; au-delà du glissement, les déformations tirées du déplacement de la traverse sont trop grandes, sauf s’il est retiré (`joinSlips`). Rm, ReH et ReL ne sont pas touchées ; les limites conventionnelles d’élasticité et les allongements au-delà le sont.',
  },
  'drive-reversed': {
    message: 'L’entraînement est revenu en arrière au point {sample} (signal {column} : {way} {unit}) et la force avec lui, de {fall} N : l’éprouvette a été déchargée puis rechargée.',
    remedy: 'Charger dans un seul sens ; l’évaluation laisse cet écart de côté, la courbe le garde (`loadingEnvelope` l’ôte aussi de l’enregistrement).',
  },
  'motion-backlash': {
    message: 'Signal {column} : retour de {way} {unit} au point {sample}, bien plus que ne le demande la force, qui a baissé de {fall} N ; jeu dans l’entraînement ou dans le capteur.',
    remedy: 'Chercher un jeu dans la vis, les axes ou le capteur ; les déformations voisines sont douteuses.',
  },
  'force-zero-moved': {
    message: 'La force chute d’un coup de {fall} N au point {sample} et repart de là : son zéro a été déplacé pendant l’essai.',
    remedy: 'Ne raccorder la force (`restoreZero`) que si c’est bien ce qui s’est passé ; ne jamais remettre à zéro sur une éprouvette chargée.',
  },
  'motion-jumps': {
    message: 'Signal {column} : il saute {count} fois alors que la force continue, jusqu’à {largest} {unit} au point {sample} ; le capteur a glissé ou a été remis en place.',
    remedy: 'Raccorder les parties (`joinJumps`) si l’éprouvette n’a pas été touchée ; les extensions de part et d’autre d’un saut sont douteuses.',
  },
  'extensometer-slipped': {
    message: 'Signal {column} : il recule d’un coup alors que la force continue le long de la droite élastique, {count} fois, au plus de {largest} {unit} au point {sample} ; l’extensomètre a glissé.',
    remedy: 'Nettoyer et bien appliquer les couteaux ; raccorder les parties (`joinJumps`), ou tenir la fenêtre élastique à l’écart : un glissement en arrière rend la pente trop forte.',
  },
  'channels-out-of-step': {
    message: 'Le décalage entre la force et le mouvement, compté en points, est de {samples} : leurs vitesses s’accordent à {correlation} après décalage, et à {without} telles qu’enregistrées.',
    remedy: 'Enregistrer les deux avec la même horloge, ou les aligner (`alignChannels`) ; un retard courbe la droite élastique.',
  },
  'several-tests': {
    message: 'L’enregistrement contient {count} essais, le deuxième à partir du point {second}.',
    remedy: 'Faire un fichier de chacun, ou diviser l’enregistrement (`splitTests`), et dépouiller chaque essai séparément.',
  },
  'file-cut-off': {
    message:
      'Le fichier s’arrête au milieu de la ligne {line} ({text}) : aucune fin de ligne ne suit, et elle a moins de cellules ou de chiffres que les lignes précédentes. Elle a été laissée de côté ; ce que l’enregistreur a écrit ensuite est inconnu.',
    remedy: 'Copier de nouveau le fichier depuis l’enregistreur ; celui-ci ne dit pas si l’éprouvette s’est rompue.',
  },
  'channel-empty': {
    message: 'Signal {column} : moins de deux valeurs numériques ; le capteur n’était pas en marche ou n’a pas été enregistré.',
    remedy: 'Vérifier la colonne ; l’essai est dépouillé comme si elle n’existait pas.',
  },
  'samples-repeated': {
    message: '{share} % des points répètent le précédent : l’enregistreur était plus rapide que le capteur.',
    remedy: 'Des points répétés font paraître trop petite la dispersion d’une pente ; enregistrer à la cadence du capteur le plus lent.',
  },
  'force-saturated': {
    message: 'La force reste à sa valeur la plus haute, {force} N, pendant {count} points : la voie était en fin d’étendue, ou l’éprouvette s’écoule à cette force.',
    remedy: 'Vérifier l’étendue de mesure du transmetteur et de l’enregistreur ; le vrai maximum, et une limite lue sur le palier, peuvent être plus hauts.',
  },
  'force-does-not-rise': {
    message: 'La force n’augmente jamais : de {first} N au début à {highest} N au plus.',
    remedy: 'Vérifier le signe et la colonne de la force, et que le fichier contient une mise en charge.',
  },
  'force-looks-like-kilonewton': {
    message: 'Une contrainte maximale de {stress} MPa est trop faible pour un métal : la force est peut-être en kN là où l’on attendait des N.',
    remedy: 'Indiquer l’unité de force à la lecture du fichier.',
  },
  'strain-looks-like-percent': {
    message: 'Une déformation de {strain} avec une pente de {slope} MPa ne convient à aucun métal : la déformation est peut-être en % là où l’on attendait un rapport.',
    remedy: 'Indiquer l’unité de la déformation à la lecture du fichier.',
  },
  'record-starts-late': {
    message: 'Le premier point porte déjà {share} % de la force maximale : le début de la mise en charge manque.',
    remedy: 'Démarrer l’enregistreur avant la mise en charge ; le zéro de la force ne peut pas être vérifié.',
  },
  'zero-drift': {
    message: 'Après la rupture, l’indication de la force s’écarte de {force} N ({share} % du maximum) du zéro d’avant l’essai.',
    remedy: 'Vérifier le zéro de la voie de force avant et après chaque essai ; chaque force porte ce doute.',
  },
  'repair-without-effect': { message: 'La correction {repair} a été demandée et n’a rien changé : {why}.', remedy: 'L’omettre, ou voir dans le contrôle de l’enregistrement quelles corrections auraient un effet.' },
  'tail-after-fracture': {
    message: 'Des points après la rupture ont été écartés (nombre : {count}) ; ils ont servi à vérifier le zéro.',
    remedy: 'Rien à faire.',
  },
  'fracture-not-recorded': {
    message: 'L’enregistrement ne montre aucune chute brusque de la force ; son dernier point est pris comme rupture.',
    remedy: 'Enregistrer jusqu’après la rupture de l’éprouvette ; un enregistrement écourté donne une extension à la rupture trop petite, et une force maximale trop petite là où la force montait encore.',
  },
  'stopped-before-fracture': {
    message: 'L’enregistrement s’arrête avant la rupture de l’éprouvette, avec la force à {share} % de son maximum.',
    remedy: 'Enregistrer jusqu’à la rupture ; la résistance peut rester valable si le maximum a été dépassé.',
  },
  'maximum-at-end': {
    message: 'La force la plus haute est à la fin de l’enregistrement : l’essai, ou son enregistrement, a été arrêté trop tôt, ou l’éprouvette s’est rompue à la force maximale.',
    remedy: 'Préciser ce qui est le cas (Lu et Su le montrent pour une éprouvette de traction) ; la résistance d’une éprouvette qui n’y a pas rompu n’est qu’au moins aussi grande, et les extensions à la force maximale sont inconnues.',
  },
  'maximum-is-spike': {
    message: 'Le maximum est un point isolé, {excess} MPa au-dessus de ses voisins.',
    remedy: 'Vérifier que le signal n’a pas de pic parasite avant de donner la résistance.',
  },
  'few-points-in-elastic-part': {
    message: 'La droite élastique repose sur peu de points : {points}, pour {wanted} souhaités.',
    remedy: 'Enregistrer plus vite ou charger plus lentement.',
  },
  'modulus-of-few-points': {
    message: 'La droite élastique repose sur {points} points, moins que les {least} qu’il faut à un module : E n’est pas donné.',
    remedy: 'Enregistrer plus vite ou charger plus lentement dans la partie élastique.',
  },
  'modulus-of-scatter': {
    message: 'La pente a une erreur-type relative de {error} %, plus que les {limit} % admis pour un module : E n’est pas donné.',
    remedy: 'Réduire le bruit ou enregistrer plus de points dans la partie élastique ; on souhaite 1 % au plus. Ce qui se compte à partir de la droite, origine et contraintes au décalage, est aussi incertain.',
  },
  'sampling-slow-for-yield': {
    message: 'À une cadence de {frequency} par seconde et une vitesse de mise en contrainte de {rate} MPa/s, la limite supérieure d’écoulement peut être trop basse de {loss} MPa au plus.',
    remedy: 'Enregistrer plus vite ou charger plus lentement au voisinage de l’écoulement.',
  },
  'extension-goes-back': {
    message: 'Signal {column} : il recule {count} fois, de {largest} {unit} au plus.',
    remedy: 'Un jeu, un retour de l’entraînement ou un bâti qui se décharge en sont la cause ; la droite et les intersections en tiennent compte.',
  },
  'extensometer-taken-off': {
    message: 'Extensomètre, signal {column} : il s’arrête au point {sample}, à {reading} {unit}.',
    remedy: 'Rien à faire ; au-delà, la déformation a une autre base.',
  },
  'extensometer-stands': {
    message: 'Extensomètre, signal {column} : il reste immobile à partir du point {sample}, près de {reading} {unit}, alors que l’essai continue ; il a été retiré ou est arrivé en butée, et ne compte que jusque-là.',
    remedy: 'Noter le moment du retrait ; au-delà, la déformation vient du déplacement de la traverse, ou manque s’il n’y en a pas.',
  },
  'extensometer-falls-back': {
    message: 'Extensomètre, signal {column} : il retombe au point {sample}, depuis {reading} {unit}, de plus que ne le peut l’éprouvette, et reste en dessous ; il a été retiré, a glissé ou a été remis à zéro, et ne compte que jusque-là.',
    remedy: 'Ne pas remettre à zéro pendant l’essai ; au-delà, la déformation vient du déplacement de la traverse, ou manque s’il n’y en a pas. Raccorder les parties (`joinJumps`) seulement si c’est bien ce qui s’est passé.',
  },
  'travel-carries-on': {
    message: 'Au-delà d’une déformation de {strain}, la courbe est prolongée d’après le déplacement de la traverse rapporté à {length} mm.',
    remedy: 'À partir de la striction les deux bases diffèrent ; au-delà, les extensions sont des estimations.',
  },
  pause: {
    message: 'La traverse est restée immobile {duration} s à une déformation de {strain} ; la contrainte est passée de {from} à {to} MPa.',
    remedy: 'Une baisse de la force à traverse immobile est une relaxation, jamais un écoulement.',
  },
  'pauses-many': {
    message: 'La traverse est restée immobile {count} fois, {total} s en tout, du point {first} au point {last} ; la plus longue pause dure {duration} s à une déformation de {strain}.',
    remedy: 'Les coups d’une pompe à main font des pauses ; passer l’écoulement d’un seul coup, ou pomper plus régulièrement.',
  },
  'pause-near-yield': {
    message: 'Pauses à moins de 0,2 % de déformation de {symbol} : {count}, la plus longue de {duration} s.',
    remedy: 'Passer l’écoulement sans s’arrêter ; répéter l’essai si cette valeur est décisive.',
  },
  'uneven-loading': {
    message: 'La vitesse varie de {variation} % dans la fenêtre élastique (écart-type rapporté à la moyenne).',
    remedy: 'Charger par coups ou par tours réguliers ; voir la figure de la vitesse en fonction du temps.',
  },
  // piece
  'gauge-length-not-proportional': {
    message: 'La longueur initiale entre repères, {length} mm, s’écarte de {deviation} % de 5,65√S0 = {proportional} mm : A doit être écrit avec un indice.',
    remedy: 'Écrire A avec la longueur entre repères en indice (A80mm), pour 11,3√S0 avec le coefficient (A11,3), ou convertir selon l’ISO 2566 dans ses limites.',
  },
  'parallel-length-assumed': {
    message: 'Aucune longueur calibrée n’a été donnée ; la longueur entre repères, {length} mm, en tient lieu.',
    remedy: 'Donner la longueur calibrée : toute déformation plastique tirée du déplacement de la traverse s’y rapporte.',
  },
  'parallel-length-short': {
    message: 'La longueur calibrée, {length} mm, est inférieure au minimum de {least} mm pour cette section et cette longueur entre repères.',
    remedy: 'Donner au moins cette longueur à la partie calibrée.',
  },
  'extensometer-length-unsuited': {
    message: 'Une base d’extensomètre de {length} mm n’est pas comprise entre {least} et {most} mm, la moitié de la longueur entre repères et neuf dixièmes de la longueur calibrée.',
    remedy: 'Prendre une base dans cet intervalle ; pour les extensions à la force maximale et au-delà, une base proche de la longueur entre repères.',
  },
  'section-small': {
    message: 'La dimension {dimension} = {value} mm est inférieure à {limit} mm : une autre annexe de la norme s’applique.',
    remedy: 'Suivre l’annexe relative aux produits minces ou aux fils.',
  },
  'section-wide': {
    message: 'Le rapport de la largeur à l’épaisseur est de {ratio}, au-dessus de 8.',
    remedy: 'La striction des éprouvettes étroites est plus régulière ; donner les dimensions avec A et Z.',
  },
  'section-spread': {
    message: 'Les lectures de la section se dispersent de {spread} % de leur moyenne.',
    remedy: 'Mesurer de nouveau ; au-dessus de 0,5 %, c’est l’éprouvette ou les lectures qui sont irrégulières.',
  },
  'section-taper': {
    message: 'La section varie de {taper} % d’une extrémité à l’autre.',
    remedy: 'Vérifier l’usinage ; l’éprouvette se rompt à sa plus petite section.',
  },
  'few-section-readings': {
    message: 'La section repose sur peu de lectures de chaque dimension : {readings}.',
    remedy: 'Mesurer en trois endroits au moins, une éprouvette ronde dans deux directions.',
  },
  'after-fracture-missing': {
    message: '{symbol} n’a pas été déterminé ; il manque : {missing}.',
    remedy: 'Rapprocher les deux fragments et mesurer la longueur entre repères ; mesurer la striction dans deux directions.',
  },
  'after-fracture-larger': {
    message: '{what} après rupture ({after}) : incompatible avec la valeur initiale ({before}).',
    remedy: 'Vérifier les lectures : la longueur entre repères augmente et la section diminue.',
  },
  'reduction-unusual': {
    message: 'Z = {reduction} % est inhabituel à côté de A = {elongation} %.',
    remedy: 'Vérifier les lectures après rupture ; seuls les métaux purs et le plomb se rétreignent presque jusqu’à rien.',
  },
  'elongation-unlike-travel': {
    message: 'A = {elongation} % d’après les repères et {travel} % d’après la courbe ne s’accordent pas.',
    remedy: 'Chercher une longueur fausse, un glissement dans les mors ou une unité fausse.',
  },
  // frame
  'extension-from-travel': {
    message: 'Les déformations sont tirées du déplacement de la traverse, et non d’un extensomètre comme le demandent les normes.',
    remedy: 'Le préciser à côté de chaque valeur fondée sur la déformation ; utiliser un extensomètre là où la valeur est décisive.',
  },
  'frame-compliance-removed': {
    message: 'Une complaisance du bâti de {compliance} mm/N a été retranchée ; elle représentait {share} % du mouvement dans la partie élastique.',
    remedy: 'Indiquer d’où vient la complaisance, et son incertitude : si elle manque, l’incertitude de E ne la contient pas.',
  },
  'frame-stretches-more-than-piece': {
    message: 'Le bâti cède {ratio} fois autant que l’éprouvette : E porte au moins {ratio} fois l’incertitude relative de la complaisance. Si celle-ci n’est pas donnée, l’incertitude de E ne la contient pas.',
    remedy: 'Utiliser un extensomètre pour E.',
  },
  'modulus-includes-frame-compliance': {
    message: 'Les déformations sont tirées du déplacement de la traverse, et non mesurées sur l’éprouvette comme le demandent les normes : la pente, {slope} MPa, est celle du bâti et de l’éprouvette ensemble, et E n’est pas donné. Ce qui compte une déformation totale (en traction : Agt, At) contient aussi la complaisance du bâti ; ce qui compte une déformation plastique, non.',
    remedy: 'Donner la complaisance du bâti ou utiliser un extensomètre ; citer la traverse à côté de chaque valeur fondée sur la déformation. Une contrainte au décalage de la pente propre de la courbe reste juste.',
  },
  'compliance-too-large': {
    message: 'La complaisance du bâti indiquée, {compliance} mm/N, fait {share} % du mouvement que montre la course : il ne reste rien pour l’éprouvette. Elle n’a pas été retirée ; ce qui repose sur la course est celui du bâti et de l’éprouvette ensemble.',
    remedy: 'L’indiquer en mm/N (20 µm/kN font 2e-5 mm/N), ou la mesurer de nouveau avec les mors de l’essai.',
  },
  'compliance-vanishing': {
    message: 'La complaisance du bâti indiquée, {compliance} mm/N, ne retire que {share} % du mouvement de la partie élastique : la pente est celle du bâti et de l’éprouvette ensemble, et E n’est pas donné.',
    remedy: 'L’indiquer en mm/N (20 µm/kN font 2e-5 mm/N), ou la mesurer avec les mors de l’essai.',
  },
  'displacement-steps-coarse': {
    message: 'Un pas de la lecture du déplacement vaut {share} % du décalage de {symbol}.',
    remedy: 'Utiliser un capteur de déplacement plus fin : un dixième du décalage est souhaité.',
  },
  // evaluation
  'window-bound-eased': {
    message: 'Aucune fenêtre élastique ne respecte toutes ses bornes ({why}) ; critère assoupli : {bound}.',
    remedy: 'Si les points sont trop peu nombreux, enregistrer plus vite dans la partie élastique ; sinon demander des parts plus faibles, ou choisir soi-même la fenêtre.',
  },
  'no-linear-part': {
    message: 'Aucune partie rectiligne n’apparaît dans la courbe ({why}). E n’est pas donné, et ce qui repose sur la droite est douteux : {symbols}.',
    remedy: 'Tirer E d’une droite de décharge ou d’une autre méthode. Là où la courbe est incurvée, sa droite est trop plate et une limite conventionnelle trop élevée : donner une contrainte à une extension totale, et lire les extensions comme des estimations. Si c’est le bruit qui écarte les fenêtres, enregistrer plus calmement.',
  },
  'window-not-linear': {
    message: 'La fenêtre indiquée n’est pas une partie rectiligne ({why}), quel que soit le reste de la courbe. E n’est pas donné, et ce qui repose sur sa droite est douteux : {symbols}.',
    remedy: 'Indiquer une autre fenêtre, ou en laisser le choix à la recherche.',
  },
  'linear-part-unknown': {
    message: 'On ne sait pas si la droite élastique repose sur une partie rectiligne : ses {points} points, à {strains} déformations différentes, ne montrent aucune courbure, et aucune autre fenêtre ne permet de comparer. E n’est pas donné.',
    remedy: 'Enregistrer dans la partie élastique plus de points et des déformations plus fines.',
  },
  'slope-over-slip': {
    message: 'L’extensomètre a glissé dans la fenêtre élastique (au point {sample}) : raccordée là, la droite aurait {joined} MPa ; le glissement change donc sa pente de {change} % ; E n’est pas donné.',
    remedy: 'Raccorder les parties (`joinJumps`) ou donner une fenêtre à l’écart du glissement ; les contraintes au décalage de cette droite portent la même erreur.',
  },
  'slope-above-others': {
    message: 'La pente, {slope} MPa, dépasse celles de toutes les autres fenêtres, {lowest} à {highest} MPa, de plus que le bruit ne l’explique : ou bien un couteau a reculé peu à peu dans la fenêtre, ce qui la rend trop forte, ou bien l’éprouvette s’est redressée en dessous, ce qui rend les autres trop faibles. L’incertitude de E couvre les deux ({share} %).',
    remedy: 'Regarder le détail élastique ; remonter l’extensomètre et recommencer, ou donner une fenêtre à l’écart de ce recul. Des capteurs des deux côtés révèlent une éprouvette cintrée.',
  },
  'slope-scatter': {
    message: 'La pente a une erreur-type relative de {error} %.',
    remedy: 'Réduire le bruit ou enregistrer plus de points ; 1 % au plus est souhaité.',
  },
  'strain-noise-flattens': {
    message: 'Le bruit de la déformation ({noise}) rend la droite élastique trop plate, d’environ {share} % ; la pente reste telle quelle et son incertitude en tient compte.',
    remedy: 'Calmer l’extensomètre ou son signal, ou donner une fenêtre plus longue : l’effet va comme le carré du bruit rapporté à la fenêtre.',
  },
  'strain-steps-open': {
    message: 'La droite élastique monte sur {steps} pas de la lecture de déformation (un pas : {step}) : ils laissent sa pente indéterminée à {share} % près, ce que contient son incertitude.',
    remedy: 'Lire la déformation par pas plus fins, ou indiquer une fenêtre plus longue : trois fois plus de pas en laissent un cinquième.',
  },
  'strain-steps-few': {
    message: 'La droite élastique monte sur {steps} pas de la lecture de déformation (un pas : {step}) : ils laissent sa pente indéterminée à {share} % près, plus que les {limit} % jusqu’auxquels E est donné. E n’est pas donné.',
    remedy: 'Lire la déformation par pas plus fins ; les contraintes au décalage de cette droite portent le même doute.',
  },
  'windows-disagree': {
    message: 'La droite élastique, {slope} MPa, est fragile : d’autres fenêtres ({windows}) donnent des pentes de {lowest} à {highest} MPa et des contraintes au décalage de 0,2 % de {low} à {high} MPa ; l’incertitude de la pente déplace ce décalage de {share} %.',
    remedy: 'Regarder le détail élastique ; donner l’intervalle, ou indiquer la fenêtre. Là où la courbe est incurvée, toutes ces pentes sont trop faibles : les intervalles n’encadrent pas la vraie valeur.',
  },
  'window-slopes-disagree': {
    message: 'La droite élastique, {slope} MPa, est fragile : d’autres fenêtres ({windows}) donnent des pentes de {lowest} à {highest} MPa.',
    remedy: 'Regarder le détail élastique ; donner l’intervalle, ou indiquer la fenêtre. Là où la courbe est incurvée, toutes ces pentes sont trop faibles : les intervalles n’encadrent pas la vraie valeur.',
  },
  'windows-fall': {
    message: 'La droite élastique, {slope} MPa, est fragile : d’autres fenêtres ({windows}) donnent des pentes jusqu’à {highest} MPa, et certaines sont négatives, car leur déformation recule pendant que la contrainte monte.',
    remedy: 'Regarder le détail élastique et le mouvement : son bruit, ses pas, ou une complaisance qui retire plus qu’il n’y a.',
  },
  'residuals-alike': {
    message: 'Les résidus voisins de la droite élastique se ressemblent (suites de même signe : {runs} ; attendues au hasard : {expected}) : son erreur-type est trop petite.',
    remedy: 'Un filtre ou la cadence de l’enregistreur corrèle les points, ou la courbe n’est pas droite dans la fenêtre ; lire l’erreur-type comme une borne inférieure.',
  },
  'window-bent': {
    message: 'La pente d’une parabole ajustée dans la fenêtre élastique varie de {change} % d’un bout à l’autre.',
    remedy: 'Regarder le détail élastique : le pied de courbe ou l’écoulement empiète sur la fenêtre.',
  },
  'slope-implausible': {
    message: 'Un module de {slope} MPa est hors de l’intervalle de {lowest} à {highest} MPa, où se situent les métaux.',
    remedy: 'Vérifier les unités, l’aire (rayon pour diamètre ?), la longueur et la complaisance du bâti.',
  },
  'offset-leverage': {
    message: 'Avec un effet de levier de {leverage}, l’incertitude de la pente déplace le décalage de {symbol} de {share} % ; des droites d’autant moins ou plus raides, par le milieu de la fenêtre, rencontrent la courbe de {low} à {high} MPa.',
    remedy: 'Utiliser un extensomètre ou un enregistrement plus calme : c’est la pente qui décide de cette valeur.',
  },
  'toe-long': {
    message: 'Le pied de courbe occupe une déformation de {shift}, soit {share} % de la déformation élastique en haut de la fenêtre.',
    remedy: 'Appliquer une précharge pour asseoir les mors ; l’origine a été déplacée là où la droite rejoint la contrainte nulle.',
  },
  'toe-outside-record': {
    message: 'La droite rejoint la contrainte nulle à une déformation de {shift}, avant le début de l’enregistrement.',
    remedy: 'L’enregistrement commence tard, ou plus raide que la droite ; vérifier le zéro et la précharge.',
  },
  'no-yield-point': {
    message: 'Pas de limite supérieure d’écoulement ; motif : {why}.',
    remedy: 'Donner la limite conventionnelle d’élasticité.',
  },
  'yield-fall-in-pause': {
    message: 'La contrainte n’a baissé que pendant l’arrêt de la traverse : c’est une relaxation, pas un écoulement.',
    remedy: 'Passer l’écoulement sans s’arrêter.',
  },
  'ends-before-hardening': {
    message: 'L’essai s’est arrêté sur le palier d’écoulement, avant l’écrouissage : ReL, {lower} MPa, est la contrainte la plus basse jusque-là, et Rm, que l’ISO 6892-1 n’y définit pas, vaut au moins la contrainte la plus haute du palier, non ReH, {upper} MPa ; Ae, Ag et Agt ne sont pas donnés.',
    remedy: 'Donner ReL comme valeur avant l’écrouissage ; tirer jusqu’à la force maximale pour Rm, Ae et Agt.',
  },
  'no-hardening': {
    message: 'Aucun écrouissage ne suit le palier d’écoulement, où ReL vaut {lower} MPa : l’ISO 6892-1 n’y définit pas de Rm. La contrainte la plus haute du palier en tient lieu, non ReH, {upper} MPa ; Ae, Ag et Agt ne sont pas donnés.',
    remedy: 'Donner ReH et ReL ; si une résistance est demandée, convenir de ce qui en tient lieu.',
  },
  'lower-yield-in-dips': {
    message: 'ReL, {lowest} MPa, se trouve dans l’une de {count} chutes brèves de la force pendant l’écoulement, dont elle est chaque fois revenue ; le bruit du déplacement cache s’il s’agit de coups de la pompe ou du métal : sans elles, ReL vaut {level} MPa.',
    remedy: 'Le dire avec ReL et Ae ; passer l’écoulement en un seul coup de pompe, ou enregistrer un déplacement qui montre si la commande recule.',
  },
  'falls-slip-or-yield': {
    message: 'Pendant l’écoulement, la force est tombée brusquement {count} fois et revenue le long de la droite élastique, {way} mm de déplacement de la traverse plus loin en tout : glissements dans les mors ou écoulements brusques du métal, que ce déplacement ne distingue pas. Avec ces chutes, ReL vaut {lowest} MPa, sans elles {level} MPa. Ae n’est pas donné : {least} si ce sont des glissements, {most} si c’est le métal.',
    remedy: 'Chercher des traces des mors sur les têtes : si l’éprouvette a glissé, retirer les glissements (`repairs.slips`) ; sinon ReL reste valable. Les déformations tirées du déplacement de la traverse après les chutes peuvent le contenir. Un extensomètre sur la longueur calibrée le dit.',
  },
  'few-points-before-proof': {
    message: 'Peu de points se trouvent entre la fin de la fenêtre élastique et {symbol} : {points}.',
    remedy: 'Enregistrer plus vite : entre des points éloignés, la corde passe sous la courbe.',
  },
  'several-crossings': {
    message: 'La courbe coupe la droite de {symbol} {count} fois ; la première intersection durable compte.',
    remedy: 'Regarder le détail élastique ; en cas d’écoulement discontinu, donner d’abord ReH et ReL.',
  },
  'proof-strength-not-reached': {
    message: '{symbol} n’a pas été atteint avant le maximum : métal fragile, ou essai arrêté trop tôt.',
    remedy: 'Ne donner que la résistance.',
  },
  'total-extension-not-reached': {
    message: '{symbol} n’a pas été atteint dans l’enregistrement.',
    remedy: 'Ne pas le donner dans le rapport.',
  },
  'maximum-wide': {
    message: 'La force reste à moins de {share} % de son maximum sur une déformation de {width} ; le bruit, les pas de lecture et les incertitudes données laissent à Agt une incertitude-type de {uncertainty}.',
    remedy: 'Donner Agt avec son incertitude-type ; une dérive de la force ou une autre allure à cet endroit le déplace dans cette largeur.',
  },
  'maximum-below-upper-yield': {
    message: 'Le maximum après le début de l’écrouissage, {strength} MPa, est inférieur à la limite supérieure d’écoulement, {upper} MPa.',
    remedy: 'Préciser lequel des deux est appelé résistance.',
  },
  'proportional-limit-by-definition': {
    message: 'La limite de proportionnalité est de {lowest} à {highest} MPa, selon la définition.',
    remedy: 'Nommer la définition avec la valeur.',
  },
  'stress-rate-outside': {
    message: 'D’après les vitesses locales, la fenêtre élastique a été chargée pour {share} % entre {lowest} et {highest} MPa/s (ISO 6892-1, méthode B), alors que 90 % sont demandés ; la vitesse de mise en contrainte médiane est de {rate} MPa/s.',
    remedy: 'Charger à une vitesse comprise dans l’intervalle ; voir la figure de la vitesse en fonction du temps.',
  },
  'mean-stress-rate-outside': {
    message: 'La vitesse de mise en contrainte sur la fenêtre élastique est de {rate} MPa/s, hors de {lowest} à {highest} MPa/s (ISO 6892-1, méthode B) ; la fenêtre contient trop peu de points pour donner ses vitesses locales.',
    remedy: 'Charger à une vitesse comprise dans l’intervalle, et enregistrer plus vite.',
  },
  'strain-rate-high': {
    message: 'La vitesse de déformation {where} est de {rate} 1/s, au-dessus de {highest} 1/s (ISO 6892-1).',
    remedy: 'Y charger plus lentement ; une vitesse élevée relève les limites d’écoulement et d’élasticité.',
  },
  'strain-rate-low': {
    message: 'D’après les vitesses locales, {share} % de l’écoulement s’est fait à {lowest} 1/s ou plus (ISO 6892-1, méthode B, pour ReL), alors que 90 % sont demandés ; la vitesse de déformation moyenne est de {rate} 1/s.',
    remedy: 'Charger plus vite pendant l’écoulement ; une vitesse faible abaisse ReL.',
  },
  'hardening-correlation-low': {
    message: 'La loi d’écrouissage ne s’ajuste qu’avec R² = {correlation}.',
    remedy: 'Une autre loi peut mieux convenir ; regarder la courbe vraie.',
  },
  'necking-answers-differ': {
    message: 'La striction commence à une déformation vraie de {curve} (u = {uncertainty}) d’après la courbe, et de {law} d’après la loi d’écrouissage.',
    remedy: 'Une autre loi peut mieux suivre cette courbe ; comparer les lois avant d’extrapoler.',
  },
  'necking-unlike-exponent': {
    message: 'Le coefficient d’écrouissage n = {exponent} et la déformation vraie répartie {strain} ne s’accordent pas comme le veut Considère.',
    remedy: 'La loi ne vaut pas jusqu’à la striction ; donner avec n le domaine d’ajustement.',
  },
  'withheld-after-slip': {
    message: 'Retenues : {symbols} ; l’éprouvette a glissé auparavant dans les mors au point {sample}, et la déformation contiendrait jusqu’à {strain} de glissement.',
    remedy: 'Retirer le glissement avant l’évaluation (`repairs.slips`), ou essayer avec un extensomètre.',
  },
  'extensions-hold-slip': {
    message: '{symbols} : la déformation contient le glissement de l’éprouvette dans les mors au point {sample} ; les valeurs sont trop grandes d’au plus {strain} de déformation.',
    remedy: 'Retirer le glissement avant l’évaluation (`repairs.slips`), ou mesurer l’allongement sur l’éprouvette rompue.',
  },
  'not-determined': {
    message: 'Non déterminé : {symbol} ; motif : {why}.',
    remedy: 'Voir la raison : avec ce qui est demandé, cet enregistrement ne permet pas cette valeur.',
  },
  // materials
  'dimension-looks-wrong': {
    message: '{symbol} = {value} {unit} sort de l’intervalle usuel de {low} à {high} {unit} ({family}). {why}',
    remedy: 'Mesurer de nouveau l’éprouvette, comparer avec ce qui a été saisi, et dépouiller de nouveau ; rien n’a été corrigé.',
  },
  'unit-looks-wrong': {
    message: '{symbol} = {value} {unit} sort de l’intervalle usuel de {low} à {high} {unit} ({family}). {why}',
    remedy: 'Indiquer les unités des colonnes à la lecture du fichier, et dépouiller de nouveau ; rien n’a été corrigé.',
  },
  'strain-looks-wrong': {
    message: '{symbol} = {value} {unit} sort de l’intervalle usuel de {low} à {high} {unit} ({family}). {why}',
    remedy: 'Voir ce que la déformation contient en plus de l’éprouvette : bâti, mors, assise de l’extensomètre.',
  },
  'unlike-family': {
    message: '{symbol} = {value} {unit} sort de l’intervalle usuel de {low} à {high} {unit} ({family}). {why}',
    remedy: 'Vérifier le matériau et son état. Les intervalles usuels ne sont pas les limites d’une spécification.',
  },
  'properties-contradict': {
    message: '{left} = {leftValue} {leftUnit} et {right} = {rightValue} {rightUnit} se contredisent : {rule}.',
    remedy: 'Voir comment les deux ont été obtenus ; l’un au moins, ou une lecture dont il dépend, est faux.',
  },
  // verification
  'force-class-not-reached': {
    message: 'Paliers qui n’atteignent pas la classe 1 : {count} sur {steps}, le premier à {force} N (terme en cause : {term}).',
    remedy: 'Pour les forces de ce domaine, ne pas se réclamer de l’ISO 6892-1 ; trouver la cause, ajuster et vérifier de nouveau.',
  },
  'rising-force-only': {
    message: 'La réversibilité de {reversibility} % dépasse celle de la classe 1 : la voie ne sert que pour des forces croissantes.',
    remedy: 'Ne tirer de cette voie ni module de décharge ni boucle d’hystérésis ; examiner les joints et le frottement.',
  },
  'falling-above-rising': {
    message: 'À {force} N, la série décroissante indique {excess} N de plus que la série croissante ; le frottement d’un vérin fait l’inverse.',
    remedy: 'Vérifier si les séries ont été échangées, si la référence a dérivé, et si le capteur ou la référence a sa propre hystérésis.',
  },
  'zero-not-verified': {
    message: 'Aucune lecture du zéro n’a été donnée : l’erreur de zéro est donc inconnue, et la classe ne tient qu’aux autres termes.',
    remedy: 'Lire l’indicateur sans force après chaque série.',
  },
  'displacement-steps-few': {
    message: 'Déplacements vérifiés : {steps} ; plus petit nombre de lectures par en dessous à l’un d’eux : {runs}. On attend dix déplacements en deux séries.',
    remedy: 'Vérifier à une dizaine de déplacements sur l’étendue utilisée, deux fois chacun.',
  },
  'verification-steps-few': {
    message: 'Paliers entre 20 % et 100 % de l’étendue : {count} ; cinq sont souhaités.',
    remedy: 'Vérifier à environ 20, 40, 60, 80 et 100 % de l’étendue, et au-dessous de 20 % à 10, 5, 2 et 1 % si l’on y utilise des forces.',
  },
  'range-not-reached': {
    message: 'Le palier le plus haut est de {force} N, soit {share} % de l’étendue ; au-dessus, rien n’est vérifié.',
    remedy: 'Vérifier jusqu’au bout de l’étendue, ou en donner le palier le plus haut comme fin.',
  },
  'class-range-starts-high': {
    message: 'La classe 1 ne vaut qu’à partir de {force} N, soit {share} % de l’étendue ; limitée vers le bas par : {term}.',
    remedy: 'Prévoir les essais de sorte que l’écoulement se situe au-dessus de cette force.',
  },
  'friction-negative': {
    message: 'Paliers où le frottement ressort négatif : {count}, au plus bas {friction} N ; le frottement n’aide jamais.',
    remedy: 'Vérifier si les séries croissante et décroissante ont été échangées, et si le zéro de la pression a dérivé.',
  },
  'pointer-above-record': {
    message: 'L’aiguille suiveuse indique {pointer} N, l’enregistrement {recorded} N : {share} % de plus. {cause}.',
    remedy: 'Donner la voie vérifiée et imprimer l’autre à côté ; regarder l’enregistrement autour de son maximum.',
  },
  'pointer-below-record': {
    message: 'L’aiguille suiveuse indique {pointer} N, l’enregistrement {recorded} N : {share} % de moins. {cause}.',
    remedy: 'Donner la voie vérifiée et imprimer l’autre à côté ; vérifier que l’aiguille court librement sur toute son échelle.',
  },
  'idle-friction-changed': {
    message: 'La course à vide demande {force} N ; elle demandait {before} N, soit un changement de {share} %.',
    remedy: 'Examiner les joints, les guidages et l’huile ; la tare de la force n’est plus ce qu’elle était.',
  },
  'idle-friction-uneven': {
    message: 'Sur la course à vide, le frottement varie de {spread} N autour de {force} N.',
    remedy: 'Chercher un alésage rayé, une tige tordue ou de l’air dans l’huile ; une tare en fonction du déplacement peut être donnée à `pressureToForce`.',
  },
  'leak-down-fast': {
    message: 'À l’arrêt, la force baisse de {share} % par minute.',
    remedy: 'Chercher une vanne, un joint ou un raccord qui fuit avant les essais comportant un maintien.',
  },
  'leak-down-settles': {
    message: 'La pression a baissé de {early} MPa par minute dans la première moitié et de {late} MPa dans la seconde : l’huile, le flexible ou l’éprouvette se stabilisaient encore.',
    remedy: 'Attendre avant de lire la fuite, ou ne lire que la seconde moitié (`from`).',
  },
  'check-out-of-limits': {
    message: 'Le contrôle {index} donne {value}, hors des limites de {lower} à {upper}.',
    remedy: 'Répéter une fois le contrôle ; s’il reste en dehors, arrêter les essais et trouver la cause avant d’émettre des résultats.',
  },
  'check-jumped': {
    message: 'Entre les contrôles {before} et {index}, l’indication a bougé de {range}, plus que {limit}.',
    remedy: 'Chercher ce qui a changé entre les deux : opérateur, éprouvette, huile, capteur.',
  },
  'check-on-one-side': {
    message: '{count} contrôles de suite, jusqu’au numéro {index}, se trouvent {side} de la ligne centrale.',
    remedy: 'Le niveau s’est déplacé : chercher la cause, et vérifier la force si l’on n’en trouve pas.',
  },
  'check-trend': {
    message: '{count} contrôles de suite, jusqu’au numéro {index}, évoluent {direction}.',
    remedy: 'Quelque chose dérive : vérifier la force avant que les limites soient atteintes.',
  },
  'check-few': {
    message: 'Les limites reposent sur peu de contrôles : {count} ; au-dessous de 20, elles sont provisoires.',
    remedy: 'Continuer les contrôles à intervalles réguliers et fixer les limites à partir d’environ 20.',
  },
  'force-drifted': {
    message: 'En l’état trouvé, l’erreur atteint {error} % à {force} N (elle était de {before} % après le réglage du {date}) ; résultats concernés depuis : {count}.',
    remedy: 'On ignore quand cela s’est produit : réexaminer chacun de ces résultats et prévenir ceux qui les utilisent.',
  },
  'force-outside-certificate': {
    message: 'Le résultat {identity} à {force} N est hors des forces contrôlées (de {low} à {high} N).',
    remedy: 'Le juger pour lui-même ; la dérive n’y est pas connue.',
  },
  'displacement-class-not-reached': {
    message: 'Paliers qui n’atteignent pas la classe 1 : {count} sur {steps}, le premier à {travel} mm (terme en cause : {term}).',
    remedy: 'Utiliser la voie pour ce qu’elle peut donner : indiquer sa classe à côté de chaque déformation, et tirer Rp d’un capteur plus fin.',
  },
  'displacement-reversal': {
    message: 'Les lectures croissantes et décroissantes diffèrent au plus de {difference} mm, à {travel} mm : jeu ou frottement dans le capteur.',
    remedy: 'Aborder chaque position du même côté ; exclure les inversions des boucles de déformation.',
  },
  'gauges-disagree': {
    message: 'Les quatre jauges s’écartent d’un plan de {share} % de la déformation moyenne.',
    remedy: 'Vérifier le câblage, le facteur et la position de chaque jauge avant de croire à la flexion.',
  },
  'bending-large': {
    message: 'La flexion est de {bending} % de la déformation moyenne : la surface s’écoule à {share} % de la contrainte moyenne nécessaire en traction bien axiale.',
    remedy: 'Aligner les mors et l’éprouvette, utiliser des rotules et redresser par une faible précharge ; ReH et la limite de proportionnalité sont trop basses.',
  },
  'compliance-runs-differ': {
    message: 'Les séries diffèrent : en haut, leurs complaisances s’étalent sur {share} % de la moyenne, plus que leur dispersion ne l’explique.',
    remedy: 'Les mors, le sens ou le frottement ont changé entre les séries ; mesurer de nouveau, et donner une complaisance à la force croissante et une autre à la force décroissante.',
  },
  'compliance-curved': {
    message: 'Un seul nombre ne convient pas à ce bâti : son mouvement suit la puissance {exponent} de la force et, au cinquième de la force la plus haute, dépasse de {share} % la proportionnalité.',
    remedy: 'Prendre un tableau ou une loi de puissance, ou mesurer entre les forces utilisées.',
  },
  'compliance-poorly-determined': {
    message: 'L’incertitude-type de la complaisance est de {uncertainty} % de sa valeur.',
    remedy: 'Utiliser un bloc plus raide ou une plus grande différence de longueurs, plus de points, et une étendue allant jusqu’aux forces des essais.',
  },
  'force-beyond-compliance': {
    message: 'Points au-dessus de {limit} N, où la complaisance du bâti n’a pas été mesurée : {count} ; elle a été prolongée jusqu’à {force} N avec sa dernière valeur.',
    remedy: 'Mesurer la complaisance jusqu’aux forces des essais.',
  },
  'window-below-compliance': {
    message: 'La fenêtre élastique commence à {force} N, au-dessous de {limit} N, où la complaisance du bâti n’a pas été mesurée.',
    remedy: 'Les bâtis sont plus souples à faible force : mesurer la complaisance à partir de là, ou placer la fenêtre plus haut.',
  },
  'modulus-carries-compliance': {
    message: 'À elle seule, la complaisance du bâti donne à E une incertitude-type de {uncertainty} %.',
    remedy: 'Utiliser un extensomètre, une éprouvette plus longue ou plus mince, ou mieux mesurer la complaisance.',
  },
  // compression and bending
  'signs-turned': {
    message: 'La charge était enregistrée négativement ({columns}) ; les signes ont été inversés pour qu’elle compte positivement.',
    remedy: 'Rien à faire ; les colonnes elles-mêmes n’ont pas été modifiées.',
  },
  'piece-squat': {
    message: 'Le rapport de la hauteur au diamètre est de {ratio}, au-dessous de {least} : le frottement aux extrémités entre dans chaque contrainte.',
    remedy: 'Utiliser une éprouvette de 0,8 à 2 diamètres de hauteur pour les matériaux de palier, de 3 pour l’usage général (ASTM E9).',
  },
  'piece-slender': {
    message: 'Le rapport de la hauteur au diamètre est de {ratio}, au-dessus de {most} : au-delà de ce que l’on fait pour des éprouvettes de compression.',
    remedy: 'Utiliser une éprouvette de 8 à 10 diamètres de hauteur pour le seul module, de 3 pour les résistances (ASTM E9).',
  },
  'buckling-near': {
    message: 'Avec un rapport de la hauteur au diamètre de {ratio}, la force a atteint {share} fois la charge de flambement au module tangent, à une déformation de {strain}.',
    remedy: 'Utiliser une éprouvette plus courte, ou ne retenir de celle-ci que ce qui est au-dessous de la moitié de cette charge.',
  },
  buckled: {
    message: 'À une déformation de {strain} ({stress} MPa), la force a dépassé la charge de flambement au module tangent d’une éprouvette droite de coefficient d’extrémité {endFactor} : au-delà, l’éprouvette fléchit.',
    remedy: 'Les valeurs au-delà de cette déformation ne doivent pas être utilisées ; une éprouvette qui flambe peut être éjectée latéralement. Utiliser une éprouvette plus courte.',
  },
  barrelled: {
    message: 'Le milieu est {ratio} fois aussi large que les extrémités : aux grandes déformations, les contraintes contiennent du frottement.',
    remedy: 'Mieux lubrifier, ou charger par étapes en lubrifiant à chaque fois ; donner les contraintes aux petites déformations.',
  },
  'ends-wider-than-middle': {
    message: 'Les extrémités sont plus larges que le milieu, qui en fait {ratio} fois la largeur : pressée entre des plateaux, une éprouvette se bombe.',
    remedy: 'Regarder si les deux diamètres sont échangés ; une poche de lubrifiant qui élargit les extrémités est rare.',
  },
  'volume-not-kept': {
    message: 'D’après les diamètres après essai, l’éprouvette a {ratio} fois son volume initial.',
    remedy: 'Vérifier les diamètres, les hauteurs et leurs unités : la compression plastique conserve le volume.',
  },
  'barrelling-not-measured': {
    message: 'La déformation a atteint {strain}, et les diamètres après l’essai n’ont pas été donnés : la mise en tonneau est inconnue.',
    remedy: 'Mesurer après l’essai le diamètre au milieu et aux extrémités.',
  },
  'height-unlike-record': {
    message: 'D’après l’enregistrement, l’éprouvette a perdu définitivement {recorded} mm de hauteur, d’après la mesure {measured} mm.',
    remedy: 'Vérifier la complaisance du bâti, la hauteur et le zéro du déplacement.',
  },
  'end-friction-not-removed': {
    message: 'Aucun coefficient de frottement n’a été donné : la courbe d’écoulement contient le frottement des extrémités.',
    remedy: 'Donner le frottement du lubrifiant, ou essayer deux hauteurs et extrapoler.',
  },
  'end-friction-removed': {
    message: 'Un frottement de {friction} a été retranché de la contrainte d’écoulement selon Siebel : {share} % à la plus grande déformation.',
    remedy: 'Indiquer le frottement et son origine ; son incertitude se reporte sur la contrainte d’écoulement.',
  },
  'compressive-strength-without-strain': {
    message: 'L’éprouvette ne s’est pas rompue : un métal ductile n’a pas de résistance à la compression, seulement des contraintes à des déformations indiquées.',
    remedy: 'Donner la limite d’élasticité, et les contraintes avec leurs déformations.',
  },
  'span-short': {
    message: 'Le rapport de la portée à la hauteur est de {ratio}, au-dessous de {least} : le cisaillement ajoute {share} % à la flèche, et le module est trop bas d’autant.',
    remedy: 'Utiliser une plus grande portée (16 fois la hauteur), ou donner la part du cisaillement avec le module.',
  },
  'large-deflection': {
    message: 'À partir d’une contrainte de {stress} MPa, la flèche dépasse {share} % de la portée : les formules des petites flèches ne valent plus, et le frottement aux appuis augmente.',
    remedy: 'N’y prendre ni contrainte ni déformation, ou utiliser une portée plus courte.',
  },
  'flexural-stress-nominal': {
    message: 'Au-delà de l’écoulement, la contrainte de flexion est nominale : pour cette section, elle surestime la contrainte de la fibre extérieure jusqu’à {factor} fois.',
    remedy: 'Ne comparer qu’avec d’autres essais de flexion sur la même section, pas avec la traction.',
  },
  'indentation-not-removed': {
    message: 'L’enfoncement aux appuis et aux poinçons n’a pas été donné et se trouve encore dans la flèche.',
    remedy: 'Le mesurer avec l’éprouvette sur une plaque plane, ou donner 0 si la complaisance du bâti le contient déjà.',
  },
  'chord-unlike-slope': {
    message: 'La corde donne {chord} MPa, la partie la plus droite {slope} MPa.',
    remedy: 'Regarder la courbe : un jeu ou l’écoulement se trouve entre les déformations de la corde ; pour un métal, prendre la pente.',
  },
  // shear, Brinell hardness, cupping, unloading loops, broken piece
  'shear-clearance': {
    message: 'Un jeu de {clearance} mm représente {share} % des {dimension} mm cisaillés : la flexion et la traction se mêlent au cisaillement.',
    remedy: 'Utiliser des outils bien ajustés et à arêtes vives ; donner le jeu avec la valeur.',
  },
  'shear-bending': {
    message: 'L’éprouvette a été pliée : sa résistance au cisaillement n’est pas celle du cisaillement pur.',
    remedy: 'Soutenir l’éprouvette jusqu’au plan de cisaillement, utiliser un outil plus ajusté et répéter l’essai.',
  },
  'shear-ratio-unusual': {
    message: 'La résistance au cisaillement vaut {ratio} fois la résistance à la traction ; de {least} à {most} fois est usuel ({family}).',
    remedy: 'Vérifier l’aire, le nombre de plans de cisaillement et la résistance à la traction donnée.',
  },
  'no-shear-modulus': {
    message: 'Aucun module de cisaillement n’est calculé : le déplacement contient, outre le cisaillement, la flexion, l’enfoncement et l’outil.',
    remedy: 'C’est un essai de torsion qui donne le module de cisaillement.',
  },
  'brinell-indentation-outside': {
    message: 'Empreinte {number} : son diamètre vaut {ratio} fois celui de la bille, hors de 0,24 à 0,60 ; elle ne compte pas.',
    remedy: 'Prendre une autre force pour cette bille : un indice plus petit pour un métal tendre, plus grand pour un métal dur.',
  },
  'brinell-diameters-differ': {
    message: 'Empreinte {number} : ses deux diamètres diffèrent de {share} %.',
    remedy: 'Chercher une surface inclinée ou un sens de laminage ; au-dessus de 1 %, le signaler avec la valeur (pratique courante).',
  },
  'brinell-one-diameter': {
    message: 'Empreinte {number} : un seul diamètre a été lu.',
    remedy: 'En lire deux à angle droit ; un pour cent du diamètre fait deux pour cent de la dureté.',
  },
  'brinell-force-not-nominal': {
    message: 'Empreinte {number} : la force {force} N s’écarte de {share} % de {nominal} N, la force de {designation} ; 1 % est admis.',
    remedy: 'Amener la force à sa valeur nominale à 1 % près ; la dureté a été calculée avec la force réelle.',
  },
  'brinell-force-in-kgf': { message: 'Empreinte {number} : la force {force} N est le nombre de {designation} en kgf, soit {nominal} N.', remedy: 'Donner la force en newtons : la dureté a été calculée avec le nombre tel que donné.' },
  'brinell-indentation-off-scale': { message: 'L’empreinte {number} ne compte pas dans la moyenne : sa force s’écarte de {share} % de celle de {designation}, que d’autres respectent à 1 % près.', remedy: 'Refaire l’empreinte avec la force de l’échelle.' },
  'brinell-index-unusual': {
    message: 'Empreinte {number} : une bille de {ball} mm avec {force} N (indice force-diamètre {index}) n’est pas un couple de la norme.',
    remedy: 'Prendre une bille de 1 ; 2,5 ; 5 ou 10 mm et une force que la norme prévoit pour elle ; les valeurs d’autres couples ne se comparent pas.',
  },
  'brinell-too-hard': {
    message: '{hardness} HBW dépasse 650 HBW, où l’échelle s’arrête : la bille elle-même cède.',
    remedy: 'Prendre un autre essai de dureté, par exemple Vickers ou Rockwell C.',
  },
  'brinell-ball-unsuited': {
    message: 'Une bille de {ball} mm est trop petite (groupe de matériaux : {material}) ; la plus petite est de {least} mm.',
    remedy: 'Recommencer avec une bille plus grande : l’empreinte doit couvrir de nombreux grains.',
  },
  'brinell-index-unsuited': {
    message: 'L’indice force-diamètre {index} ne convient pas à {hardness} HBW (groupe de matériaux : {material} ; usuel : {usual}).',
    remedy: 'Recommencer avec une force d’indice usuel.',
  },
  'brinell-force-unsteady': {
    message: 'Empreinte {number} : la force a varié de {share} % pendant le maintien ; la plus haute, {force} N, compte.',
    remedy: 'Maintenir la force à 1 % près : la rattraper doucement, sans jamais la dépasser.',
  },
  'brinell-dwell-outside': {
    message: 'Empreinte {number} : la force a été maintenue {duration} s, au lieu de 10 à 15 s.',
    remedy: 'Maintenir de 10 à 15 s, ou donner la durée : les métaux tendres fluent.',
  },
  'brinell-rise-outside': {
    message: 'Empreinte {number} : la force a été appliquée en {duration} s, au lieu de 2 à 8 s.',
    remedy: 'Appliquer la force en 2 à 8 s, sans choc.',
  },
  'brinell-dwell-not-found': {
    message: 'Empreinte {number} : aucune partie à force maintenue ne ressort de l’enregistrement.',
    remedy: 'Enregistrer d’avant la montée jusqu’après la décharge.',
  },
  'brinell-piece-thin': {
    message: 'L’éprouvette a une épaisseur de {thickness} mm, inférieure à 8 fois la profondeur d’empreinte ({least} mm).',
    remedy: 'Prendre une bille et une force plus petites ; aucune trace ne doit apparaître sur la face opposée.',
  },
  'brinell-near-edge': {
    message: 'L’empreinte {number} est à {distance} mm du bord, moins de 2,5 fois son diamètre ({least} mm).',
    remedy: 'Faire l’essai plus loin du bord.',
  },
  'brinell-near-neighbour': {
    message: 'L’empreinte {number} est à {distance} mm de la suivante, moins de 3 fois son diamètre ({least} mm).',
    remedy: 'Faire l’essai plus loin des autres empreintes : le métal y est écroui.',
  },
  'strength-estimated': {
    message: 'Une résistance à la traction de {strength} MPa est estimée d’après la dureté, à environ 10 % près.',
    remedy: 'Ne jamais accepter une pièce d’après elle : faire un essai de traction là où la résistance est décisive.',
  },
  'strength-not-estimated': {
    message: 'Aucune résistance à la traction n’est estimée ; motif : {why}.',
    remedy: 'Faire un essai de traction.',
  },
  'cupping-crack-not-recorded': {
    message: 'Flan {number} : la force ne baisse pas de {share} % après son maximum ; l’enregistrement ne contient pas de fissure, et aucune profondeur n’est donnée.',
    remedy: 'Charger jusqu’à ce que la fissure traverse la tôle, et enregistrer au-delà.',
  },
  'cupping-fall-gradual': {
    message: 'Flan {number} : la force baisse progressivement, sur {depth} mm ; l’instant de la fissure est incertain d’autant.',
    remedy: 'Observer l’embouti dans un miroir ou par une caméra, à travers le protecteur fermé et jamais dans l’axe de chargement, et arrêter dès que la lumière passe ; charger plus lentement près du maximum.',
  },
  'cupping-contact-uncertain': {
    message: 'Flan {number} : la force monte progressivement ; la bille touche quelque part entre {earliest} et {latest} mm de course. La profondeur compte à partir du milieu et est incertaine de {doubt} mm.',
    remedy: 'Lire la course au premier contact à l’œil ou à une petite force connue, ou mesurer le godet avec une jauge de profondeur.',
  },
  'readings-differ': {
    message: 'Les valeurs de {symbol} vont de {lowest} à {highest} {unit} : {share} % de leur moyenne, alors que {limit} % est déjà beaucoup pour un seul matériau (usage courant).',
    remedy: 'Examiner la plus éloignée : ses lectures, sa place sur l’éprouvette, son enregistrement. N’en écarter aucune sans cause.',
  },
  'cupping-displacement-coarse': {
    message: 'Flan {number} : un pas de la lecture du déplacement vaut {step} mm ; 0,1 mm est souhaité.',
    remedy: 'Utiliser un capteur de déplacement plus fin.',
  },
  'cupping-frame-included': {
    message: 'La profondeur contient le mouvement du bâti, qui n’a pas été donné.',
    remedy: 'Mesurer la complaisance du bâti, ou la profondeur de l’embouti avec une jauge.',
  },
  'cupping-sheet-outside': {
    message: 'Une épaisseur de tôle de {thickness} mm est hors de 0,1 à 2 mm, où l’indice IE est défini.',
    remedy: 'Une tôle plus épaisse ou étroite a ses propres outils et symboles ; ne pas comparer avec IE.',
  },
  'cupping-blank-narrow': {
    message: 'Le flan a une largeur de {width} mm ; 90 mm ou plus sont souhaités.',
    remedy: 'Découper des flans plus larges, pour que le serre-flan tienne sur tout le pourtour.',
  },
  'cupping-holding-force': {
    message: 'Le flan était serré par {force} N, et non par environ 10 kN.',
    remedy: 'Régler le serre-flan à environ 10 kN : un flan mal serré est entraîné et donne une profondeur trop grande.',
  },
  'cupping-tools-other': {
    message: 'Une bille de {ball} mm et une matrice de {die} mm ne sont pas les 20 et 27 mm de l’indice IE.',
    remedy: 'Donner les outils avec la profondeur ; elle ne se compare pas avec IE.',
  },
  'cupping-few-blanks': {
    message: 'Nombre de flans sur lesquels repose la profondeur : {blanks} ; trois ou plus sont souhaités.',
    remedy: 'Essayer au moins trois flans et donner la moyenne.',
  },
  'unloading-refused': {
    message: 'La réversibilité, {reversibility} %, dépasse 1,5 % : la force ne vaut qu’en montée, donc rien n’est tiré de la décharge.',
    remedy: 'Vérifier la force à la descente, ou la mesurer à l’éprouvette plutôt que dans l’huile.',
  },
  'reversibility-unknown': {
    message: 'La réversibilité de la force n’est pas connue : le frottement du vérin courbe et élargit les boucles.',
    remedy: 'Vérifier la force à la montée et à la descente, et donner sa réversibilité.',
  },
  'unloading-none': {
    message: 'L’enregistrement ne contient pas de décharge ; motif : {why}.',
    remedy: 'Ramener l’entraînement en arrière jusqu’à ce que la force ait nettement baissé, et recharger ; enregistrer le tout.',
  },
  'unloading-not-to-zero': {
    message: 'La boucle {number} ne descend qu’à {share} % de son sommet ; sa déformation rémanente est lue là où sa droite rejoint la contrainte nulle.',
    remedy: 'Décharger presque jusqu’à zéro là où la déformation rémanente est décisive.',
  },
  'permanent-set-not-bracketed': {
    message: '{symbol} n’est pas déterminé : les déformations rémanentes des boucles vont de {least} à {most} %.',
    remedy: 'Décharger à partir d’une contrainte plus basse et d’une plus haute, pour qu’une déformation rémanente soit au-dessous de la limite et une au-dessus.',
  },
  'fracture-outside-middle': {
    message: 'La rupture est à {distance} mm du repère le plus proche, moins d’un tiers de la longueur initiale entre repères ({least} mm).',
    remedy: 'A reste valable s’il atteint sa valeur minimale ; sinon mesurer par subdivision, ou essayer une autre éprouvette.',
  },
  'fracture-at-mark': {
    message: 'L’éprouvette s’est rompue à un repère.',
    remedy: 'Marquer plus légèrement ; A est douteux, et la résistance peut être basse.',
  },
  'fracture-outside-parallel': {
    message: 'L’éprouvette s’est rompue {place} : A et Z ne sont pas ceux de la longueur calibrée, et la résistance est une borne inférieure.',
    remedy: 'Vérifier les congés, les mors et l’alignement, et essayer une autre éprouvette.',
  },
  'elongation-small': {
    message: 'A = {elongation} % est inférieur à 5 % : deux repères ordinaires sont trop grossiers pour lui.',
    remedy: 'Mesurer avec des repères fins : arcs tracés à la pointe, lus au microscope.',
  },
  // planning
  'force-near-capacity': {
    message: 'La plus grande force à prévoir, {force} N, est de {share} % de la capacité de {capacity} N.',
    remedy: 'Prendre une section ou une force d’essai plus petite ; une famille de matériaux ne borne pas une barre inconnue.',
  },
  'force-above-capacity': {
    message: 'La plus grande force à prévoir, {force} N, est de {share} % de la capacité de {capacity} N : ce bâti ne doit pas faire l’essai.',
    remedy: 'Prendre une section ou une force d’essai plus petite, ou un autre bâti ; ne jamais relever le limiteur de pression.',
  },
  'force-unverified': {
    message: 'Aucune étendue de force vérifiée n’a été donnée pour le bâti.',
    remedy: 'Faire vérifier la force, et donner la plus petite force vérifiée et l’erreur à cette force.',
  },
  'force-below-verified': {
    message: 'La plus petite force qui compte, {force} N ({what}), est inférieure à {limit} N ({why}).',
    remedy: 'Prendre une section ou une force d’essai plus grande, ou faire vérifier le bas de l’étendue.',
  },
  'pressure-near-limit': {
    message: 'La pression d’huile atteindrait {pressure} MPa, soit {share} % de {limit} MPa ({device}).',
    remedy: 'Prendre une section ou une force d’essai plus petite ; ne jamais relever le limiteur de pression, et garder le transmetteur dans son étendue.',
  },
  'travel-near-stroke': {
    message: 'L’essai demande environ {travel} mm de déplacement, soit {share} % de la course de {stroke} mm.',
    remedy: 'Rattraper les jeux avant le début de l’essai, ou raccourcir l’éprouvette dans les limites des règles.',
  },
  'frame-compliance-unknown': {
    message: 'La complaisance du bâti n’est pas connue : la vitesse, le déplacement et l’énergie emmagasinée sont des valeurs minimales, et E ne peut être tiré du déplacement de la traverse.',
    remedy: 'Mesurer la complaisance avec un bloc raide, un barreau connu ou deux longueurs, ou utiliser un extensomètre.',
  },
  'oil-volume-unknown': {
    message: 'Le volume d’huile sous pression n’est pas connu : les coups dans la partie élastique et l’énergie emmagasinée sont des valeurs minimales.',
    remedy: 'Estimer le vérin, les conduites et les flexibles ; l’huile prend souvent plus de coups que le piston.',
  },
  'elastic-speed-too-fast-for-yield': {
    message: 'Maintenue pendant l’écoulement, la vitesse de la partie élastique déformerait l’éprouvette à {rate} 1/s, soit {ratio} fois la vitesse à viser alors.',
    remedy: 'Ralentir avant l’écoulement, là où la feuille de cadence l’indique.',
  },
  'elastic-part-quick': {
    message: 'À cette vitesse, la partie élastique jusqu’au changement de vitesse dure {time} s : à peine cinq lectures d’un cadran.',
    remedy: 'L’enregistrer, ou viser le bas des vitesses admises par la norme.',
  },
  'ball-force-error': {
    message: 'La force peut être fausse de {error} %, la force d’essai d’une bille de {limit} % au plus.',
    remedy: 'Faire vérifier le bâti en classe 1 à cette force, ou choisir une force où il l’est.',
  },
  'drive-too-fast': {
    message: 'L’entraînement demanderait {number} {what} par minute (étape : {stage}) : plus de {limit} à la main sont difficiles à tenir régulièrement.',
    remedy: 'Viser une vitesse plus basse que la norme admet, et l’indiquer.',
  },
  'drive-strokes-coarse': {
    message: 'Un coup de pompe déplace la traverse de {travel} mm, soit {ratio} fois le décalage de Rp0.2 : l’écoulement passe en un seul coup.',
    remedy: 'Après le domaine élastique, actionner le levier lentement et par coups partiels, ou utiliser un entraînement à pas plus fins.',
  },
  'planned-sampling-slow': {
    message: 'Une cadence de {rate} par seconde est au-dessous des {least} que demande la vitesse de mise en contrainte de {stressRate} MPa/s : ReH peut être trop bas de {loss} MPa au plus.',
    remedy: 'Enregistrer plus vite, ou charger plus lentement au voisinage de l’écoulement.',
  },
  'strain-not-in-accordance': {
    message: 'La norme {standard} demande un extensomètre : les limites conventionnelles d’élasticité et E seraient tirés du déplacement de la traverse, ce qui n’est pas conforme à la norme.',
    remedy: 'Utiliser un extensomètre, ou signaler l’écart à côté de chaque valeur.',
  },
  'structural-acceptance': {
    message: 'Les valeurs doivent servir à accepter une pièce porteuse : ce plan ne le permet pas.',
    remedy: 'Suivre le code applicable ; la décision revient à un laboratoire compétent disposant d’une machine vérifiée, et à un professionnel agréé ou autrement habilité.',
  },
  'planned-index-unusual': {
    message: 'L’indice force-diamètre 0,102 F/D² = {index} n’est aucun de {usual}.',
    remedy: 'Prendre pour cette bille une force du tableau.',
  },
  'planned-indentation-outside': {
    message: 'À {hardness} HBW, le diamètre de l’empreinte serait de {ratio} fois celui de la bille, hors de 0,24 à 0,60.',
    remedy: 'Prendre un autre indice (force sur carré du diamètre de la bille).',
  },
  'planned-span-short': {
    message: 'La portée vaut {ratio} fois la hauteur du barreau : au-dessous de {limit}, le cisaillement s’ajoute à la flèche.',
    remedy: 'Prendre une plus grande portée, ou ne pas déterminer E.',
  },
  'planned-buckling': {
    message: 'Avec une hauteur sur diamètre de {ratio}, l’éprouvette peut flamber à partir d’une déformation de {strain}, avant celle de {planned} qui est prévue.',
    remedy: 'Prendre une éprouvette plus courte, jusqu’à 3 diamètres, ou s’arrêter plus tôt.',
  },
  'head-weak': {
    message: '{what} : {stress} MPa à la plus grande force, contre {limit} MPa que la tête peut porter ; {margin} fois le nécessaire.',
    remedy: 'Agrandir la tête ou réduire la section ; l’éprouvette doit se rompre dans sa longueur calibrée.',
  },
  'head-too-small': {
    message: 'La tête fait {ratio} fois la dimension de la section, au-dessous de {least}.',
    remedy: 'Élargir la tête ; une éprouvette qui se rompt dans la tête est perdue.',
  },
  'grip-short': {
    message: 'Les mors tiennent {length} mm de la tête, moins que {least} mm.',
    remedy: 'Allonger les têtes : les deux tiers des faces de mors à coins doivent porter, un filetage doit être engagé d’un diamètre.',
  },
  'grip-may-slip': {
    message: 'Les mors tiennent {margin} fois le nécessaire, au-dessous de {least}.',
    remedy: 'Nettoyer et aviver les faces, graisser le dos des coins, augmenter la force de serrage ou allonger la tête.',
  },
  'fillet-small': {
    message: 'Le rayon des congés, {radius} mm, est inférieur à {least} mm.',
    remedy: 'L’augmenter : un épaulement vif y amorce la rupture.',
  },
  'parallel-length-long': {
    message: 'La longueur calibrée, {length} mm, est {ratio} fois la longueur entre repères, {gauge} mm : l’éprouvette peut se rompre hors des repères.',
    remedy: 'Raccourcir la longueur calibrée, ou la marquer d’intervalles égaux sur toute sa longueur.',
  },
  'piece-too-short': {
    message: 'Une longueur totale de {length} mm ne peut contenir la longueur calibrée, les congés et les têtes, qui demandent {least} mm.',
    remedy: 'Allonger l’ébauche, ou raccourcir les têtes dans la limite de ce que demandent les mors.',
  },
  'shape-outside-tolerance': {
    message: 'Dimension {dimension} : elle varie de {difference} mm le long de l’éprouvette, plus que {limit} mm.',
    remedy: 'Réusiner l’éprouvette, ou la mesurer en plus d’endroits et indiquer l’écart.',
  },
  'size-outside-tolerance': {
    message: 'Dimension {dimension} : elle s’écarte de {difference} mm de sa valeur nominale, plus que {limit} mm ; l’aire doit être mesurée, et non prise nominale.',
    remedy: 'Mesurer l’éprouvette et utiliser sa propre aire.',
  },
  // uncertainty
  'budget-not-linear': {
    message: 'Le modèle se courbe dans l’incertitude de la grandeur d’entrée {input} : ce que le bilan laisse de côté est de {share} % de la variance.',
    remedy: 'Contrôler par une simulation de Monte-Carlo et donner son intervalle ; la distribution est probablement dissymétrique.',
  },
  'one-term-dominates': {
    message: 'Grandeur d’entrée {input} : elle fait {share} % de la variance de {symbol}.',
    remedy: 'L’améliorer en premier ; contrôler par une simulation de Monte-Carlo, puisque sa forme est celle du résultat.',
  },
  'few-degrees-of-freedom': {
    message: 'L’incertitude de {symbol} repose sur peu de degrés de liberté effectifs, {freedom} : le facteur d’élargissement est de {factor}.',
    remedy: 'Faire plus de lectures de ce qui domine, ou utiliser un écart-type commun à plusieurs séries.',
  },
  'uncertainty-incomplete': {
    message: 'Les incertitudes laissent de côté ce qui n’a pas été donné : {missing}.',
    remedy: 'Donner leurs incertitudes ; ce qui est laissé de côté compte comme exact.',
  },
  'uncertainty-large': {
    message: 'Grandeur d’entrée {input} : son incertitude-type est de {share} % de sa valeur.',
    remedy: 'Voir si l’on voulait dire des pour cent ou une autre unité : les incertitudes relatives sont des fractions (0,005 pour 0,5 %), les longueurs sont en mm.',
  },
  'zero-uncertainty-large': {
    message: 'L’incertitude-type du zéro de la force est de {share} % de la force la plus grande.',
    remedy: 'Voir si l’on voulait dire une autre unité : elle est en N, et non une part de la force.',
  },
  'uncertainty-not-determined': {
    message: 'Aucune incertitude n’est donnée pour {symbols} : si la grandeur d’entrée {input} change d’une part si petite soit-elle de son incertitude, l’essai ne donne pas de valeur.',
    remedy: 'Indiquer une incertitude plus petite de cette grandeur, ou faire une simulation de Monte-Carlo et donner son intervalle avec les tirages qui ont échoué.',
  },
  'noise-decides': {
    message: 'Aucune incertitude n’est donnée pour {symbols} : avec un autre bruit de même force, la plupart des répétitions de l’essai n’ont pas cette valeur.',
    remedy: 'La valeur peut venir du bruit : ne la donner que si la courbe la montre. Enregistrer avec moins de bruit.',
  },
  'budgets-not-linear': {
    message: 'L’essai suit la grandeur d’entrée {input} selon une courbe dans son incertitude : les bilans laissent de côté jusqu’à {share} % de la variance ({symbols}).',
    remedy: 'Les contrôler par une simulation de Monte-Carlo et donner ses intervalles ; les distributions sont probablement dissymétriques.',
  },
  'budgets-of-few-degrees-of-freedom': {
    message: 'Des incertitudes reposent sur peu de degrés de liberté effectifs, {freedom} au minimum : {symbols}.',
    remedy: 'Faire plus de lectures de ce qui domine, ou utiliser un écart-type commun à plusieurs séries.',
  },
  'noise-correlated': {
    message: 'Le bruit des points voisins est lié (corrélation {correlation}) : la fenêtre élastique le suit, et son choix est une ligne des bilans.',
    remedy: 'Trouver la source de la perturbation lente ; choisir soi-même la fenêtre, et la prendre large.',
  },
  'budget-not-validated': {
    message: 'Le bilan et la simulation de Monte-Carlo diffèrent aux bornes de l’intervalle de {symbol} de {low} et {high} {unit}, alors que {tolerance} {unit} est admis.',
    remedy: 'Donner l’intervalle de la simulation de Monte-Carlo ; le modèle n’est pas assez linéaire, ou la forme pas assez normale, pour le bilan.',
  },
  'budgets-not-validated': {
    message: 'Le bilan et la simulation de Monte-Carlo diffèrent aux bornes de l’intervalle de plus qu’il n’est admis : {symbols}.',
    remedy: 'Donner pour ces grandeurs les intervalles de la simulation de Monte-Carlo ; le modèle n’est pas assez linéaire, ou la forme pas assez normale, pour le bilan.',
  },
  'budget-trials-few': {
    message: 'Les tirages sont trop peu nombreux pour dire si l’intervalle du bilan est valable : {symbols}.',
    remedy: 'Faire plus de tirages là où cela importe ; quatre fois plus de tirages font connaître les bornes deux fois mieux.',
  },
  'monte-carlo-not-converged': {
    message: 'La simulation de Monte-Carlo s’est arrêtée après {trials} tirages, avant que ses résultats soient stables à {tolerance} près.',
    remedy: 'Permettre plus de tirages, ou demander moins de chiffres.',
  },
  'monte-carlo-no-variance': {
    message: '{input} a {freedom} degrés de liberté. Avec 2 ou moins, comme pour trois lectures, ses tirages n’ont pas de variance : ils ne donnent pas d’incertitude-type à {symbol}, mais un intervalle.',
    remedy: 'Donner l’intervalle, et l’incertitude-type du bilan ; quatre lectures ou un écart-type commun donnent une variance aux tirages.',
  },
  'monte-carlo-trials-few': {
    message: '{trials} tirages sont peu pour un intervalle de {coverage} % : ses bornes sont connues à partir de {least}.',
    remedy: 'Faire plus de tirages, ou ne pas en donner le nombre : le calcul s’arrête alors quand ses résultats sont stables.',
  },
  'monte-carlo-trials-failed': {
    message: 'Tirages sans valeur de {symbol} : {failed} sur {trials}.',
    remedy: 'La distribution est celle des tirages qui en ont donné une ; voir si la valeur existe réellement dans son incertitude.',
  },
  // several tests, decisions
  'few-replicates': {
    message: 'De deux résultats, seule l’étendue est donnée : {symbols}.',
    remedy: 'Essayer au moins trois éprouvettes ; un écart-type tiré de deux valeurs ne dit rien.',
  },
  'esd-few-values': {
    message: '{n} valeurs : les limites de ce test de plusieurs valeurs aberrantes sont bonnes à partir de 25 valeurs et passables à partir de 15.',
    remedy: 'Chercher une seule valeur aberrante par Grubbs, ou essayer plus d’éprouvettes.',
  },
  'variation-above-usual': {
    message: '{symbol} varie de {variation} %, plus de trois fois les {usual} % usuels au sein d’un laboratoire.',
    remedy: 'Chercher une cause dans l’usinage, le serrage, la mesure ou la force avant d’incriminer le métal.',
  },
  'replicate-outlying': {
    message: '{symbol} de l’essai {test} ({value} {unit}) est plus éloigné que le hasard ne l’explique : G = {statistic}, au-dessus de {limit}.',
    remedy: 'Chercher une cause physique et la consigner ; sans elle, la valeur reste.',
  },
  'replicate-odd': {
    message: 'L’essai {test} est plus éloigné que le hasard ne l’explique pour plusieurs grandeurs : {symbols} ; le plus pour {symbol}, {value} {unit} (G = {statistic}, au-dessus de {limit}).',
    remedy: 'Plusieurs grandeurs à la fois désignent ce qu’elles partagent : la section, la force ou une longueur de cette éprouvette. Noter la cause ; sans cause, les valeurs restent.',
  },
  'replicates-repeated': {
    message: 'Un même enregistrement est donné comme plusieurs essais : {tests}. Il compte {count} fois : n est trop grand et la dispersion trop faible.',
    remedy: 'Écarter les copies ; plusieurs évaluations d’un enregistrement ne sont pas des répétitions.',
  },
  'replicates-read-alike': {
    message: 'Les essais {tests} ont les mêmes lectures, {count} fois : égales par hasard, ce que des lectures de peu de chiffres peuvent être, ou un même essai donné plusieurs fois.',
    remedy: 'Écarter ce qui est une copie ; les lectures d’éprouvettes différentes restent.',
  },
  'replicates-mixed': {
    message: 'Les essais diffèrent ({what} : {values}) et ont pourtant été regroupés.',
    remedy: 'Leur dispersion contient aussi cette différence ; ne regrouper que des semblables là où elle est décisive.',
  },
  'replicates-not-pooled': {
    message: '{symbols} : non regroupés, car les essais diffèrent ({what} : {values}).',
    remedy: 'Ne regrouper que des semblables (les allongements après conversion selon l’ISO 2566), ou demander le regroupement dans les options.',
  },
  'replicates-at-least': {
    message: '{symbols} : non pris de {count} des {total} essais ({tests}), qui se sont terminés avant leur force maximale ; leurs valeurs ne sont qu’au moins aussi grandes.',
    remedy: 'Essayer d’autres éprouvettes jusqu’à la rupture ; une moyenne sans ces essais n’est pas celle de tous, et ne dit rien de la dispersion de tous.',
  },
  'group-off-the-mean': {
    message: 'La moyenne du groupe {group} est à l’écart : h = {h}, au-delà de {limit}.',
    remedy: 'Comparer son bâti, ses longueurs, ses unités et ses lectures avec ceux des autres ; garder ses résultats.',
  },
  'group-scatters': {
    message: 'Le groupe {group} se disperse plus que les autres : k = {k}, au-dessus de {limit}.',
    remedy: 'Examiner son serrage, ses lectures et son usinage ; garder ses résultats.',
  },
  'group-variance-outlying': {
    message: 'Le groupe {group} contient {share} de tous les carrés (limite {limit}) ; verdict du test de Cochran : {verdict}.',
    remedy: 'Chercher une cause ; n’écarter le groupe que si l’on en trouve une et qu’on la consigne.',
  },
  'group-mean-outlying': {
    message: 'La moyenne du groupe {group} est la plus écartée : G = {statistic} (limite {limit}) ; verdict du test de Grubbs : {verdict}.',
    remedy: 'Chercher une cause ; n’écarter le groupe que si l’on en trouve une et qu’on la consigne.',
  },
  'limit-within-uncertainty': {
    message: '{symbol} est à {distance} {unit} de sa limite, dans son incertitude élargie {uncertainty} {unit} : d’après l’incertitude seule, la valeur peut se trouver de part ou d’autre.',
    remedy: 'Nommer la règle de décision avec le verdict ; essayer plus d’éprouvettes ou mieux mesurer là où c’est décisif.',
  },
  'limit-of-other-size': {
    message: '{symbol} vaut {value} {unit}, sa limite {limit} {unit} : l’un est {ratio} fois l’autre, comme s’ils étaient dans des unités différentes.',
    remedy: 'Donner la limite dans l’unité de la valeur : N, mm, MPa, et les parts comme rapports (0,22 ou 22 %, pas 22).',
  },
  'acceptance-zone-empty': {
    message: 'Des bandes de garde de {guard} {unit} des deux côtés ne laissent rien entre {lower} et {upper} {unit} : aucune valeur de {symbol} ne peut passer.',
    remedy: 'Mesurer mieux ou essayer plus d’éprouvettes jusqu’à ce que les bandes de garde tiennent entre les limites, ou convenir d’une autre règle avant l’essai.',
  },
  'guard-of-two-limits': {
    message: '{symbol} passe, avec un risque de {risk} % : la bande de garde tient {one} % à chaque limite, et les deux limites sont proches.',
    remedy: 'Si le risque à une limite était convenu comme risque total, demander une bande de garde plus large (guardFactor), ou mieux mesurer.',
  },
  'rounding-decides': {
    message: 'C’est l’arrondi qui décide : {symbol} a été comparé comme {compared} {unit} ; {value} {unit}, tel que mesuré, donne l’autre verdict.',
    remedy: 'L’indiquer avec le verdict : l’arrondi fait partie de la règle convenue, et le risque est celui de la valeur mesurée.',
  },
  'decision-without-uncertainty': {
    message: 'La décision sur {symbol} a été prise sans son incertitude : le risque de se tromper est inconnu.',
    remedy: 'Déterminer l’incertitude ; sans elle, seule l’acceptation simple est possible.',
  },
  'decision-on-travel': {
    message: '{symbol} repose sur le déplacement de la traverse : le verdict vaut à condition qu’un extensomètre le confirme.',
    remedy: 'Répéter avec un extensomètre avant que la valeur serve à une réception.',
  },
  'decision-without-hardening': {
    message: '{symbol} relève de la contrainte la plus haute du palier d’écoulement : aucun écrouissage ne le suit, et l’ISO 6892-1 n’y définit pas de Rm.',
    remedy: 'Convenir de ce qui tient lieu de résistance pour un tel matériau avant que la valeur serve à la réception.',
  },
  'decision-for-structure': {
    message: '{symbol} est destiné à un usage structural : le verdict vaut à condition qu’un laboratoire qualifié et l’ingénieur responsable le confirment.',
    remedy: 'Suivre les codes locaux et la pratique des professionnels agréés ; un essai fait en cours n’est pas un certificat.',
  },
  'gauge-length-unstated': {
    message: 'La longueur entre repères de {symbol} n’est pas connue ; la limite peut donc être fixée pour une autre.',
    remedy: 'Donner la longueur entre repères et l’aire avec la valeur.',
  },
  'values-disagree': {
    message: '{link} : {left} = {leftValue} {leftUnit} et {right} = {rightValue} {rightUnit} ne s’accordent pas (tolérance {tolerance} {leftUnit}).',
    remedy: 'Voir les causes probables de ce lien ; l’une des deux lectures, ou la règle elle-même, ne tient pas ici.',
  },
  'link-one-sided': {
    message: '{link} : {symbol} n’est qu’au moins aussi grand, car l’essai s’est terminé avant sa force maximale ; le lien peut montrer qu’il est trop grand, non qu’il est trop petit.',
    remedy: 'Mener l’essai au-delà de la force maximale ; les deux côtés peuvent alors être comparés.',
  },
  'compared-record-differs': { message: 'Les deux résultats proviennent d’enregistrements différents ({first} et {second}).', remedy: 'Rien à faire si deux essais sont comparés ; si un seul enregistrement était visé, chercher le fichier modifié.' },
  'compared-piece-differs': { message: 'Les éprouvettes diffèrent par : {names}.', remedy: 'Comparer d’abord les mesures de l’éprouvette ; elles déplacent toute valeur qui en dépend.' },
  'compared-options-differ': { message: 'Les options des deux résultats diffèrent par : {names}.', remedy: 'Évaluer les deux avec les mêmes options si les essais doivent être comparés.' },
  'compared-version-differs': { message: 'Les deux résultats ont été obtenus avec les versions {first} et {second}.', remedy: 'Le journal des modifications dit où des nombres ont changé d’une version à l’autre.' },
  'compared-value-moved': { message: '{symbol} s’est déplacé de {difference} {unit} par rapport à {first} {unit} alors que l’enregistrement, l’éprouvette et les options sont les mêmes (versions {firstVersion} et {secondVersion}).', remedy: 'Le journal des modifications devrait nommer ce changement ; dans une même version la même entrée donne le même nombre, l’un des deux a donc été modifié.' },
  'compared-beyond-uncertainty': { message: '{symbol} diffère de {times} incertitudes-types, plus que {limit} : {first} et {second} {unit}.', remedy: 'Chercher une cause dans l’éprouvette, le bâti ou les options, ou une source que l’incertitude laisse de côté.' },
  'compared-one-lacks': { message: 'Seul le résultat {number} des deux contient {symbol}.', remedy: 'Les constats de l’autre résultat disent pourquoi la valeur y manque, ou elle n’a pas été demandée.' },
  'compared-at-least': {
    message: 'Aucune différence n’est donnée pour : {symbols} ; là où un essai s’est terminé avant sa force maximale (résultat {numbers}), la valeur n’est qu’au moins aussi grande.',
    remedy: 'Comparer des essais qui ont dépassé leur force maximale ; une borne ne renseigne que d’un côté.',
  },
  'calibration-date-missing': { message: 'Le jour de la dernière vérification de la force n’est pas indiqué ; son âge est donc inconnu.', remedy: 'Donner le jour du certificat sous la forme année-mois-jour.' },
  'calibration-age-unknown': { message: 'La force a été vérifiée le {date} ; le jour de l’essai n’est pas indiqué sous la forme année-mois-jour, l’âge de la vérification est donc inconnu.', remedy: 'Donner le jour de l’essai sous la forme année-mois-jour.' },
  'calibration-expired': { message: 'La force a été vérifiée le {date}, {months} mois avant l’essai ; l’intervalle de vérification est de {interval} mois.', remedy: 'Vérifier la force avant le prochain essai, et juger celui-ci d’après les erreurs constatées.' },
  'calibration-after-test': { message: 'La force a été vérifiée le {date}, après l’essai du {test} : une vérification ultérieure montre ce que la force indique maintenant.', remedy: 'Nommer la vérification valable le jour de l’essai ; d’après les erreurs constatées lors de la suivante, juger de ce qui a pu dériver.' },
  'force-outside-verified': { message: '{symbol} se trouve à {force} N ; la force a été vérifiée de {low} à {high} N.', remedy: 'Vérifier la force là où elle sert, ou prendre une éprouvette plus grande ou plus petite ; ne revendiquer aucune classe pour cette valeur.' },
  'force-outside-calibration': {
    message: '{symbol} se trouve à {force} N ; la voie n’est étalonnée que de {low} à {high} N.',
    remedy: 'Étalonner là où la force sert : depuis le dessous de la fenêtre élastique jusqu’au maximum.',
  },
  'calibration-hardly-used': { message: 'La force la plus élevée, {force} N, vaut {share} % de ce jusqu’où la voie est étalonnée ({high} N) : l’essai n’emploie que peu de l’étalonnage, ou les deux sont dans des unités différentes (bar pour MPa fait un dixième, kN pour N un millième).', remedy: 'Comparer les unités de l’enregistrement et de l’étalonnage. Si elles s’accordent, étalonner jusqu’à la force employée : les doutes sur l’étalonnage sont des parts de sa force la plus élevée.' },
  'force-class-coarse': { message: 'La force est vérifiée en classe {forceClass} ; les normes d’essai usuelles demandent la classe 1 ou mieux.', remedy: 'Ne pas revendiquer la conformité à ces normes ; chercher ce qui limite la classe.' },
  'force-class-not-in-uncertainty': { message: 'La force est vérifiée en classe {forceClass} : chaque force et chaque contrainte peut s’écarter de {share} %, et aucune incertitude indiquée n’en tient compte.', remedy: 'Donner la classe ou l’incertitude de la force parmi les incertitudes de l’essai, ou l’ajouter au bilan d’incertitude du résultat.' },
  'force-class-unlike': { message: 'Les incertitudes comptent la force en classe {counted} ; elle est vérifiée en classe {forceClass}.', remedy: 'Compter la classe du certificat.' },
  'calibration-outlier': { message: 'La paire {pair} de l’étalonnage, à {force} N, s’écarte de {off} N de l’étalonnage de toutes les autres (de degré {without} ; avec elle de degré {degree}) : c’est une valeur aberrante, et elle n’a pas été retirée.', remedy: 'Chercher une erreur d’écriture ou de lecture et mesurer de nouveau cette paire ; ne la retirer que pour une cause connue.' },
  'calibration-degree-by-one': { message: 'Le degré {degree} de l’étalonnage repose sur la paire {pair}, à {force} N : sans elle le degré {without} suffit.', remedy: 'Mesurer de nouveau cette paire et d’autres voisines ; une seule paire ne distingue pas une voie courbe d’une erreur.' },
  'calibration-hysteresis': { message: 'Au retour, la référence indique {difference} N de plus qu’à l’aller pour la même lecture, soit {share} % de la force la plus élevée et plus que la dispersion.', remedy: 'Étalonner seulement à force croissante, comme lors des essais, ou compter l’écart parmi les incertitudes ; chercher un frottement des joints.' },
  'calibration-points-few': { message: '{points} paires à {readings} lectures laissent {freedom} degrés de liberté à côté du degré {degree} : la dispersion de l’étalonnage, et une valeur aberrante parmi ses paires, sont à peine connues.', remedy: 'Étalonner à cinq forces au moins, trois fois chacune.' },
  'calibration-scatter': { message: 'À {force} N, l’étalonnage s’écarte de {share} % de sa paire ; une voie de classe 1 peut s’écarter de {allowed} %.', remedy: 'Chercher ce qui disperse (lecture, frottement, référence) et mesurer de nouveau ; ne revendiquer aucune classe meilleure.' },
  'force-nominal': { message: 'La force est la pression d’huile fois l’aire nominale de {area} mm² : ce que retiennent joints et guidages, d’ordinaire quelques pour cent, compte comme force de l’éprouvette, et chaque contrainte est trop élevée d’autant.', remedy: 'Étalonner par rapport à un dynamomètre étalon ; d’ici là, donner un rendement et l’incertitude de la force, ou la classe d’une force vérifiée.' },
  'force-efficiency-doubt': { message: 'La force est la pression d’huile fois l’aire nominale de {area} mm² et un rendement de {efficiency} dont l’incertitude n’est pas indiquée ; le frottement des joints change avec la pression, l’usure et la température.', remedy: 'Étalonner par rapport à un dynamomètre étalon, ou indiquer l’incertitude de la force ou la classe d’une force vérifiée.' },
  'channel-calibration-old': { message: 'La voie de force a été étalonnée le {date}, {months} mois avant l’essai ; un an au plus est d’usage.', remedy: 'L’étalonner de nouveau, ou indiquer une vérification de la force valable le jour de l’essai.' },
  'compliance-of-other-grips': { message: 'La complaisance du bâti a été mesurée avec les mors « {measured} » ; cet essai a été fait avec « {used} ».', remedy: 'Mesurer la complaisance avec les mors de l’essai : les mors y ont une grande part.' },
  'compliance-of-other-direction': { message: 'La complaisance du bâti a été mesurée dans le sens « {measuredDirection} » ; cet essai charge le bâti dans le sens « {usedDirection} ».', remedy: 'Mesurer la complaisance dans le sens de l’essai : d’autres parties du bâti portent la force.' },
  'pause-in-elastic-window': { message: 'La commande est restée immobile dans la fenêtre de la droite élastique : {count} fois, le plus longtemps {duration} s à {strain} mm/mm.', remedy: 'Placer la fenêtre au-dessus ou au-dessous de la pause, ou charger la partie élastique sans arrêt : ce qui s’y relâche courbe la droite.' },
  'falls-many': { message: 'Pendant la montée, la commande recule avec la force {count} fois ; la plus grande chute est de {fall} N, au point {sample}.', remedy: 'Pomper sans laisser reculer le piston ; vérifier la valve et la pompe. L’évaluation laisse ces boucles de côté.' },
};
