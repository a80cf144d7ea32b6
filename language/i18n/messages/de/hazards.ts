import type { Bundle } from '../bundle.ts';

export const hazards: Bundle = {
  'air at that pressure drives chips into eyes and goes through skin.':
    'Luft mit diesem Druck treibt Späne in die Augen und dringt durch die Haut.',
  'The shop allows air up to {0} for blowing by hand, and 29 CFR 1910.242(b) requires less than {1} for cleaning.':
    'Die Werkstatt erlaubt Druckluft bis {0} zum Ausblasen von Hand, und 29 CFR 1910.242(b) verlangt zum Reinigen weniger als {1}.',
  'Write “air below 30 psi”, or your own lower limit.':
    '„air below 30 psi“ schreiben, oder einen niedrigeren eigenen Grenzwert.',
  'No pressure is given for {0}.': 'Kein Druck ist angegeben für {0}.',
  'blowing dry': 'das Trockenblasen',
  'air at full line pressure drives chips into eyes and goes through skin.':
    'Luft mit vollem Netzdruck treibt Späne in die Augen und dringt durch die Haut.',
  'Write “with air at most” and a pressure below {0} ({1}).':
    '„with air at most“ und einen Druck unter {0} schreiben ({1}).',
  'Air at {0} is not below {1} ({2}).': 'Druckluft mit {0} liegt nicht unter {1} ({2}).',
  'Lower it.': 'Niedriger einstellen.',
  'Air of {0} may be as high as the line pressure.': 'Druckluft mit {0} kann so hoch sein wie der Netzdruck.',
  'Write “at most” and a pressure below {0} ({1}).': '„at most“ und einen Druck unter {0} schreiben ({1}).',
  '29 CFR 1910.242(b)': '29 CFR 1910.242(b)',
  'shop {0}': 'Werkstatt {0}',
  'within 30 °F (16.7 °C) of its flash point a liquid is handled as a more flammable one (29 CFR 1910.106(a)(19))':
    'näher als 30 °F (16,7 °C) am Flammpunkt gilt eine Flüssigkeit als leichter entzündlich (29 CFR 1910.106(a)(19))',
  'This bath is {0}, with no upper limit, and the flash point of {1} is {2}.':
    'Dieses Bad hat {0}, ohne obere Grenze, und der Flammpunkt von {1} ist {2}.',
  'This bath is at {0}, and the flash point of {1} is {2}.': 'Dieses Bad hat {0}, und der Flammpunkt von {1} ist {2}.',
  'from its flash point up it gives off vapor that a spark lights, and the whole tank can burn.':
    'ab dem Flammpunkt gibt die Flüssigkeit Dampf ab, den ein Funke entzündet, und die ganze Wanne kann brennen.',
  'Write the highest temperature that the bath may reach, well below that: {0}.':
    'Die höchste Temperatur schreiben, die das Bad erreichen darf, deutlich darunter: {0}.',
  'Keep the bath well below that: {0}. Or use a fluid with a higher flash point.':
    'Das Bad deutlich darunter halten: {0}. Oder eine Flüssigkeit mit höherem Flammpunkt verwenden.',
  '“{0}” sounds like something {1}, and nothing says whether it is.':
    '„{0}“ klingt nach einer Gefahr ({1}), und nichts sagt, ob es so ist.',
  'under stored pressure': 'gespeicherter Druck',
  'Write {0}, or not {1}.': '{0} schreiben, oder not {1}.',
  'No step follows this hazard in its stage.': 'Auf diese Gefahr folgt in ihrem Arbeitsgang kein Schritt.',
  'This hazard comes after the step that it warns about ({0}).':
    'Diese Gefahr steht nach dem Schritt, vor dem sie warnt ({0}).',
  'it would be read after the harm is done.': 'sie würde gelesen, wenn der Schaden da ist.',
  'Put it before the step that it warns about.': 'Vor den Schritt setzen, vor dem sie warnt.',
  'Put it before the step.': 'Vor den Schritt setzen.',
  'This can hurt somebody, but NOTICE is only for damage to property.':
    'Das kann jemanden verletzen, aber NOTICE ist nur für Sachschäden.',
  'people who look for danger skip a NOTICE.': 'wer auf Gefahren achtet, überliest ein NOTICE.',
  'Write CAUTION if it can cause a minor injury, WARNING if it can maim or kill, DANGER if it will.':
    'CAUTION schreiben, wenn es leicht verletzen kann, WARNING, wenn es schwer verletzen oder töten kann, DANGER, wenn es das tun wird.',
  'The flash point of {0} is {1}: it need not be heated to burn.':
    'Der Flammpunkt von {0} ist {1}: das brennt auch ohne Erwärmen.',
  'This bath is at a hot station, no temperature is given, and the flash point of {0} is {1}.':
    'Dieses Bad steht an einem heißen Arbeitsplatz, eine Temperatur ist nicht angegeben, und der Flammpunkt von {0} ist {1}.',
  'Use a fluid with a flash point well above room temperature, or wipe with a little of it from a safety can.':
    'Eine Flüssigkeit mit einem Flammpunkt deutlich über Raumtemperatur verwenden, oder mit wenig davon aus einer Sicherheitskanne abwischen.',
  'Write how warm the bath is, as in “at 40..45 °C”, well below that.':
    'Schreiben, wie warm das Bad ist, zum Beispiel „at 40..45 °C“, deutlich darunter.',
  'the sheet does not warn of it, since no caution follows from a title.':
    'das Blatt warnt nicht davor, denn aus einem Namen folgt keine Warnung.',
};
