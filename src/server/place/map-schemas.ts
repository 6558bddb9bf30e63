/** What a map is drawn on, for the API’s document. */
export const MAP_SCHEMAS = {
  MapSettings: {
    type: 'object',
    additionalProperties: false,
    required: ['tiles'],
    properties: {
      tiles: {
        type: ['object', 'null'],
        additionalProperties: false,
        required: ['url', 'attribution'],
        properties: { url: { type: 'string' }, attribution: { type: 'string' } },
        description: 'Null where none is set: maps are then drawn from state lines and named places alone.',
      },
    },
    examples: [{ tiles: null }],
  },
};
