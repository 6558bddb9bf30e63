/**
 * Words of the body, of harm and of its treatment in English and Spanish, as staff type them; common usage, no source.
 * A part of a word stands with a star. The list finds what it knows: a text without a hit may tell of health all the same.
 */
export const MEDICAL_WORDS: readonly string[] = [
  ...['ambulance', 'amputat*', 'antibiotic*', 'bandag*', 'bled', 'bleed*', 'blood*', 'bruis*', 'burns?'],
  ...[
    'concuss*',
    'contus*',
    'cpr',
    'ct scan',
    'defibrillat*',
    'diabet*',
    'diagnos*',
    'dialysis',
    'dislocat*',
  ],
  ...['doctor', 'dose', 'epilep*', 'fractur*', 'hospital*', 'icu', 'infect*', 'intensive care'],
  ...[
    'intubat*',
    'lacerat*',
    'medic(?:al|ally|ation|ations|ine|ines)',
    'miscarriage',
    'mri',
    'nurse',
    'overdose',
  ],
  ...[
    'oxygen',
    'paraly[sz]*',
    'paramedic*',
    'patient',
    'pills?',
    'pregnan*',
    'prescri*',
    'psychiatr*',
    'seizure*',
  ],
  ...['sedat*', 'spinal', 'splint*', 'sprain*', 'sti?tch(?:es|ed)?', 'surg(?:ery|eon|ical)', 'sutur*'],
  ...['symptom*', 'tourniquet', 'trauma*', 'unconscious*', 'vomit*', 'wound*', 'x-?rays?'],
  ...[
    'ambulancia',
    'amputad*',
    'cirug[ií]a',
    'conmoci[oó]n',
    'desmay*',
    'embaraz*',
    'enfermer*',
    'fractura*',
  ],
  ...['herid[ao]s?', 'inconsciente', 'lesi[oó]n*', 'm[eé]dic*', 'paciente', 'puntos de sutura', 'quemadura*'],
  ...['receta', 'sangr*', 'vendaj*', 'v[oó]mit*'],
];
