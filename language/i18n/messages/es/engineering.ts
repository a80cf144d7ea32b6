import type { Bundle } from '../bundle.ts';

export const engineering: Bundle = {
  'The guide must have a diameter over nothing.': 'La guía debe tener un diámetro mayor que cero.',
  'The seat cannot have a diameter under nothing.': 'El asiento no puede tener un diámetro menor que cero.',
  'The seat is as wide as the guide or wider: no pressure would lift this needle. Measure both again.':
    'El asiento es tan ancho como la guía o más: ninguna presión levantaría esta aguja. Medir los dos otra vez.',
};
