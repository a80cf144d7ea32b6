import type { Bundle } from '../bundle.ts';

export const hazards: Bundle = {
  'air at that pressure drives chips into eyes and goes through skin.':
    'el aire a esa presión lanza virutas a los ojos y atraviesa la piel.',
  'The shop allows air up to {0} for blowing by hand, and 29 CFR 1910.242(b) requires less than {1} for cleaning.':
    'El taller permite aire hasta {0} para soplar a mano, y 29 CFR 1910.242(b) exige menos de {1} para limpiar.',
  'Write “air below 30 psi”, or your own lower limit.': 'Escribir «air below 30 psi», o un límite propio más bajo.',
  'No pressure is given for {0}.': 'No se da ninguna presión para {0}.',
  'blowing dry': 'secar con aire',
  'air at full line pressure drives chips into eyes and goes through skin.':
    'el aire a plena presión de red lanza virutas a los ojos y atraviesa la piel.',
  'Write “with air at most” and a pressure below {0} ({1}).':
    'Escribir «with air at most» y una presión inferior a {0} ({1}).',
  'Air at {0} is not below {1} ({2}).': 'El aire a {0} no está por debajo de {1} ({2}).',
  'Lower it.': 'Bajarla.',
  'Air of {0} may be as high as the line pressure.': 'El aire a {0} puede llegar hasta la presión de red.',
  'Write “at most” and a pressure below {0} ({1}).': 'Escribir «at most» y una presión inferior a {0} ({1}).',
  '29 CFR 1910.242(b)': '29 CFR 1910.242(b)',
  'shop {0}': 'taller {0}',
  'within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19))':
    'a menos de 30 °F (16,7 °C) de su punto de inflamación un líquido se trata como uno más inflamable (29 CFR 1910.106(a)(19))',
  'This bath is {0}, with no upper limit, and the flash point of {1} is {2}.':
    'Este baño está a {0}, sin límite superior, y el punto de inflamación de {1} es {2}.',
  'This bath is at {0}, and the flash point of {1} is {2}.':
    'Este baño está a {0}, y el punto de inflamación de {1} es {2}.',
  'from its flash point up it gives off vapor that a spark lights, and the whole tank can burn.':
    'desde su punto de inflamación desprende vapor que una chispa enciende, y puede arder toda la cuba.',
  'Write the highest temperature that the bath may reach, well below that: {0}.':
    'Escribir la temperatura más alta que puede alcanzar el baño, muy por debajo de esa: {0}.',
  'Keep the bath well below that: {0}. Or use a fluid with a higher flash point.':
    'Mantener el baño muy por debajo: {0}. O usar un fluido con un punto de inflamación más alto.',
  '“{0}” sounds like something {1}, and nothing says whether it is.': '«{0}» suena a algo {1}, y nada dice si lo es.',
  'under stored pressure': 'con presión acumulada',
  'Write {0}, or not {1}.': 'Escribir {0}, o not {1}.',
  'No step follows this hazard in its stage.': 'Ningún paso sigue a este peligro en su etapa.',
  'This hazard comes after the step that it warns about ({0}).':
    'Este peligro viene después del paso del que avisa ({0}).',
  'it would be read after the harm is done.': 'se leería cuando el daño ya está hecho.',
  'Put it before the step that it warns about.': 'Ponerlo antes del paso del que avisa.',
  'Put it before the step.': 'Ponerlo antes del paso.',
  'This can hurt somebody, but NOTICE is only for damage to property.':
    'Esto puede herir a alguien, y NOTICE es solo para daños materiales.',
  'people who look for danger skip a NOTICE.': 'quien busca peligros se salta un NOTICE.',
  'Write CAUTION if it can cause a minor injury, WARNING if it can maim or kill, DANGER if it will.':
    'Escribir CAUTION si puede causar una lesión leve, WARNING si puede mutilar o matar, DANGER si lo hará.',
  'The flash point of {0} is {1}: it need not be heated to burn.':
    'El punto de inflamación de {0} es {1}: arde sin necesidad de calentarlo.',
  'This bath is at a hot station, no temperature is given, and the flash point of {0} is {1}.':
    'Este baño está en un puesto caliente, no se da temperatura, y el punto de inflamación de {0} es {1}.',
  'Use a fluid with a flash point well above room temperature, or wipe with a little of it from a safety can.':
    'Usar un fluido con punto de inflamación muy por encima de la temperatura ambiente, o limpiar a mano con un poco de un bidón de seguridad.',
  'Write how warm the bath is, as in “at 40..45 °C”, well below that.':
    'Escribir a qué temperatura está el baño, por ejemplo «at 40..45 °C», muy por debajo de eso.',
  'the sheet does not warn of it, since no caution follows from a title.':
    'la hoja no advierte de ello, porque de un título no sale ningún aviso.',
};
