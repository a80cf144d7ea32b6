import type { Bundle } from '../bundle.ts';

export const drafting: Bundle = {
  'A first draft, made from the family. Each {0} is for you to fill in: no figure is given that nobody gave.':
    'Un primer borrador, hecho a partir de la familia. Cada {0} es para rellenar: no hay ningún valor que nadie haya dado.',
  '{0} torque': 'Par de {0}',
  'Shim rate': 'Efecto del suplemento',
  'Own lidded basket, own number': 'Cesta propia con tapa, número propio',
  'Take in': 'Recepción',
  'As found': 'Estado al recibir',
  'Strip and mark': 'Desarmar y marcar',
  'Wash and look over': 'Lavar y revisar',
  Build: 'Montaje',
  'Own cup, own number': 'Vaso propio, número propio',
  Set: 'Ajuste',
  Test: 'Prueba',
  'Match the set': 'Igualar el juego',
  Finish: 'Acabado',
  'Change the shim': 'Cambiar el suplemento',
  'Free what binds': 'Liberar lo que se traba',
  'Set it again': 'Ajustar de nuevo',
  'Open it again': 'Abrir de nuevo',
  'What does each part lie on, in or through? What holds it? Which parts are renewed every time?':
    '¿Sobre qué, en qué o a través de qué va cada pieza? ¿Qué la sujeta? ¿Qué piezas se renuevan siempre?',
  'Ground and lapped faces, and what guards them: {0}': 'Caras rectificadas y lapeadas, y lo que las protege: {0}',
};
