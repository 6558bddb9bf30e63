const text = { type: 'string' };
const BASIS = {
  enum: ['read', 'read-secondary', 'memory'],
  description:
    'Read at its source, read where another repeats it, or from memory: to be marked wherever it is shown.',
};

const WORD = {
  type: 'object',
  required: ['slug', 'label', 'source', 'basis'],
  properties: {
    slug: { ...text, description: 'What documents carry.' },
    label: text,
    source: text,
    basis: BASIS,
    group: text,
    definition: text,
    definitionBasis: BASIS,
  },
};

/** What the vocabulary answers, for the API's document. */
export const VOCABULARY_SCHEMAS = {
  Vocabulary: {
    type: 'object',
    required: ['day', 'version', 'note', 'lists', 'stateLabels'],
    properties: {
      day: { ...text, format: 'date' },
      version: { enum: ['2013', '2024'] },
      note: { type: ['string', 'null'] },
      lists: {
        type: 'array',
        items: {
          type: 'object',
          required: ['id', 'title', 'words'],
          properties: { id: text, title: text, words: { type: 'array', items: WORD } },
        },
      },
      stateLabels: {
        type: 'array',
        items: {
          type: 'object',
          required: ['state', 'source', 'basis', 'list', 'labels'],
          properties: {
            state: { ...text, examples: ['AL'] },
            source: text,
            basis: BASIS,
            list: { enum: ['casualty-types', 'contributing-factors'] },
            labels: {
              type: 'array',
              items: {
                type: 'object',
                required: ['label', 'federal'],
                properties: {
                  label: text,
                  federal: {
                    type: 'array',
                    items: text,
                    description: 'None where no federal word means it; of several a person chooses.',
                  },
                  note: text,
                },
              },
            },
          },
        },
      },
    },
  },
};
