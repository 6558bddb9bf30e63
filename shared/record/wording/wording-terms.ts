/** What a phrase does: puts the blame on somebody, guesses, or says what the law makes of it. */
export type WordingKind = 'blame' | 'guess' | 'law';

/** What to say instead; the sentences stand with the languages. */
export type WordingAsk = 'seen' | 'drink' | 'speed' | 'done' | 'source' | 'cause' | 'office';

export interface WordingTerm {
  readonly kind: WordingKind;
  readonly ask: WordingAsk;
  /** Phrases as parts of a regular expression over lower case, each between borders of words. */
  readonly phrases: readonly string[];
}

/** Common practice, no source: the words that people reach for when they are upset. */
export const ENGLISH_TERMS: readonly WordingTerm[] = [
  {
    kind: 'blame',
    ask: 'seen',
    phrases: [
      '(?:his|her|their|my|our|your|whose|nobody.s|no one.s|own) fault',
      '(?:at )?fault',
      '(?:to|they|i|we|he|she) blame[sd]?',
      'careless(?:ly|ness)?',
      'reckless(?:ly|ness)?',
      'irresponsibl[ey]',
      'stupid(?:ly|ity)?',
      'idiots?',
      'foolish(?:ly)?',
      'incompetent(?:ly)?',
      'clumsy',
      'crazy',
      'show(?:ing|ed)? off',
      'horsing around',
      'fooling around',
      'inattentive',
      '(?:wasn.t|weren.t|was not|were not|not) paying attention',
      'on purpose',
      'out of control',
      'dangerously',
    ],
  },
  {
    kind: 'blame',
    ask: 'done',
    phrases: [
      '(?:should|ought to|could|must)(?:n.t| not)? have(?: known| avoided| looked| seen)?(?<!must have)',
      'shoulda',
      'failed to',
      'failure to',
      'neglected to',
      'forgot to',
      'ignored (?:the|our|my|all|every)',
      'knew better',
    ],
  },
  { kind: 'blame', ask: 'speed', phrases: ['(?:way |far |much )?too fast', 'speeding'] },
  {
    kind: 'guess',
    ask: 'drink',
    phrases: ['drunk(?:en)?', 'intoxicated', 'tipsy', 'stoned', 'on drugs', 'under the influence'],
  },
  {
    kind: 'guess',
    ask: 'source',
    phrases: [
      'probably',
      'presumably',
      'maybe',
      'perhaps',
      'must have',
      '(?:may|might) have',
      'i (?:think|guess|assume|suppose|believe|bet|reckon)',
      'we (?:think|guess|assume|suppose|believe)',
      'apparently',
      'obviously',
      'no doubt',
      'undoubtedly',
      'seem(?:s|ed)? (?:to|like)',
      'likely',
      'supposedly',
    ],
  },
  {
    kind: 'guess',
    ask: 'cause',
    phrases: ['caused by', 'was caused', 'because (?:he|she|they) (?:was|were|did|had)'],
  },
  {
    kind: 'law',
    ask: 'office',
    phrases: [
      'negligen(?:t|tly|ce)',
      'liab(?:le|ility)',
      'illegal(?:ly)?',
      'unlawful(?:ly)?',
      'against the law',
      'br(?:oke|eak|eaking|eaks) the law',
      'violat(?:ed|ion|ions|ing)',
      'guilty',
      'crim(?:e|inal|inally)',
      'assault(?:ed)?',
      'bui',
      'd[uw]i',
      'unseaworth(?:y|iness)',
      'breach(?:ed)?',
      'duty of care',
      '(?:not |non.?)?reportable',
      'no report (?:is )?(?:needed|required|due)',
      'lawsuit',
    ],
  },
];

/** Accents are often left out on a phone. */
export const SPANISH_TERMS: readonly WordingTerm[] = [
  {
    kind: 'blame',
    ask: 'seen',
    phrases: [
      '(?:(?:por|tuvo|tiene|tuvieron|fue|es) )?(?:la |su |mi |nuestra )?culpa',
      'culpables?',
      'descuidad[oa]s?',
      'descuido',
      'imprudentes?',
      'imprudencia',
      'irresponsables?',
      'temerari[oa]s?',
      'est[uú]pid[oa]s?',
      'idiotas?',
      'inconscientes? de',
      'torpes?',
      'loc[oa]s?',
      'a prop[oó]sito',
      'distra[ií]d[oa]s?',
      'no prest(?:aba|aban|[oó]|aron) atenci[oó]n',
      'sin control',
    ],
  },
  {
    kind: 'blame',
    ask: 'done',
    phrases: [
      'deb(?:[ií]an?|i[oó]|ieron|er[ií]an?) (?:de )?haber(?:se)?',
      'ten(?:[ií]an?|dr[ií]an?) que haber(?:se)?',
      'podr[ií]an? haber(?:se)?',
      'se olvid(?:[oó]|aron) de',
      'no hizo caso',
      'no hicieron caso',
    ],
  },
  { kind: 'blame', ask: 'speed', phrases: ['(?:muy|demasiado) r[aá]pido', 'exceso de velocidad'] },
  {
    kind: 'guess',
    ask: 'drink',
    phrases: [
      'borrach[oa]s?',
      'ebri[oa]s?',
      '(?:estaban?|iban?|andaban?) tomad[oa]s?',
      'drogad[oa]s?',
      'bajo los efectos',
    ],
  },
  {
    kind: 'guess',
    ask: 'source',
    phrases: [
      'probablemente',
      'quiz[aá]s?',
      'tal vez',
      'a lo mejor',
      'seguramente',
      'seguro que',
      'creo que',
      'creemos que',
      'supongo que',
      'supuestamente',
      'me imagino que',
      'parece que',
      'parec[ií]an?',
      'obviamente',
      'sin duda',
      'habr[aá]n? sido',
    ],
  },
  { kind: 'guess', ask: 'cause', phrases: ['causad[oa] por', 'a causa de'] },
  {
    kind: 'law',
    ask: 'office',
    phrases: [
      'negligentes?',
      'negligencia',
      'ilegal(?:es|mente)?',
      'il[ií]cit[oa]s?',
      'contra la ley',
      'viol(?:[oó]|aron|aci[oó]n) (?:de )?(?:la ley|las leyes|las reglas|la regla|una regla)',
      'infracci[oó]n(?:es)?',
      'delitos?',
      'responsabilidad (?:civil|legal|penal)',
      'incumpli(?:[oó]|eron|miento)',
      'no hay que informar',
      'demanda judicial',
    ],
  },
];
