import type { CautionTag } from '../methods/index.js';

/** @internal Cautions in French, by what they speak of. */
export const frenchCautions: Readonly<Record<CautionTag, string>> = {
  force:
    'Fermer le protecteur et porter des lunettes de protection avant d’appliquer toute force ; se tenir à l’écart de l’axe de chargement. Le bâti, l’huile et les flexibles libèrent l’énergie emmagasinée lorsqu’une éprouvette cède ; une énergie imprimée est une valeur minimale.',
  guard: 'Ne jamais ouvrir le protecteur ni passer la main derrière lui sous charge ; lire les cadrans de l’extérieur.',
  brittle: 'Les éprouvettes dures, fragiles ou entaillées projettent des fragments, sans prévenir.',
  extensometer:
    'Ne retirer un extensomètre qu’à une charge à laquelle le mode opératoire le permet ; mesurer la striction hors charge ou par voie optique.',
  grips: 'Garder les mains hors des mors pendant qu’ils se ferment et pendant que l’éprouvette se redresse sous traction.',
  platens:
    'Garder les mains hors de l’espace entre les plateaux. Une éprouvette comprimée qui n’est pas d’équerre ou pas centrée peut être éjectée latéralement.',
  column:
    'Une éprouvette élancée flambe soudainement et saute hors du montage ; aucune force de flambement calculée n’est une charge sûre.',
  tool: 'Garder les mains hors de l’outil, et hors de l’espace entre celui-ci et l’éprouvette, pendant qu’il se ferme ; ne placer l’éprouvette qu’à l’arrêt de l’entraînement et sans force.',
  span: 'Un barreau fléchi peut glisser de ses appuis ou se détendre brusquement à la décharge ; un barreau dur se rompt en deux morceaux qui sont projetés.',
  shear:
    'Une goupille ou un flan cisaillé est chassé hors de l’outil : placer un obstacle qui l’arrête, et ne pas se tenir sur sa trajectoire.',
  ball: 'Les billes et les éprouvettes dures peuvent éclater sous la force : protecteur fermé, yeux protégés, et aucune bille ébréchée ou fissurée.',
  blank: 'Les flans ont des arêtes vives, et l’embouti un bord déchiré ; décharger entièrement avant d’ouvrir le serre-flan.',
  limits:
    'Rester dans la capacité, la course et le domaine des mors et des outils ; ne jamais neutraliser ni relever le limiteur de pression. Si une éprouvette ne cède pas à la plus haute force admise, faire tomber la pression et ne pas s’approcher avant qu’elle soit nulle.',
  oil: 'Faire tomber entièrement la pression avant d’ouvrir un raccord ou le protecteur : un jet d’huile peut pénétrer la peau et constitue une urgence médicale. L’huile peut être chaude, et sur le sol elle fait glisser.',
  drive:
    'L’entraînement peut bouger de lui-même à la rupture ou à la décharge : suivre la notice du bâti ; ni manches amples, ni cheveux longs dénoués, ni gants à proximité.',
  edges: 'Les bords de rupture sont tranchants, et l’endroit rompu peut être chaud.',
  alloys:
    'Les copeaux et les poussières d’alliages de magnésium, de titane et de béryllium sont des dangers en eux-mêmes : incendie, ou intoxication.',
  heavy: 'Les plateaux, les outils et les ébauches sont lourds : les lever à plusieurs ou avec un engin, et fixer le bâti à son établi.',
  wiring: 'Couper l’alimentation électrique avant toute intervention sur le transmetteur, son câblage ou l’entraînement.',
  decisions:
    'Ces résultats décrivent ces éprouvettes. Ce ne sont pas des valeurs de calcul. Les décisions concernant les structures, les équipements sous pression, le levage, l’aéronautique ou l’usage médical relèvent du code applicable et d’un professionnel agréé ou autrement habilité ; une réception exige une machine vérifiée, un extensomètre là où il est requis, et un laboratoire compétent. La loi, les codes locaux et les règles de l’atelier priment sur tout ce qui est dit ici.',
};
