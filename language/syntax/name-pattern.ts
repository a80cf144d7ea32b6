/** What a name may have besides digits, `_` and single hyphens, as a class of a pattern: the grammar says the same. */
export const nameLetters = 'A-Za-zÀ-ÖØ-öø-ʯ';

/** A whole name, as the language reads it. */
export const namePattern = new RegExp(`^[${nameLetters}][${nameLetters}0-9_]*(?:-[${nameLetters}0-9_]+)*$`, 'u');
