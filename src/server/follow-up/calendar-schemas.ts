type Schema = Record<string, unknown>;

export const FEED_ID = '5b0e7a52-9a0f-4f0e-8a53-0d6f3c1b2a47';

const feed = {
  id: { type: 'string', format: 'uuid' },
  createdAt: { type: 'string', format: 'date-time' },
};
const EXAMPLE = { id: FEED_ID, createdAt: '2026-06-13T16:00:00.000Z' };

function members(properties: Record<string, Schema>, example: object): Schema {
  return {
    type: 'object',
    additionalProperties: false,
    required: Object.keys(properties),
    properties,
    examples: [example],
  };
}

/** Schemas of calendars by the name that they have in the API's document. */
export const CALENDAR_SCHEMAS: Record<string, Schema> = {
  CalendarFeedList: members(
    { items: { type: 'array', maxItems: 1, items: members(feed, EXAMPLE) } },
    { items: [EXAMPLE] },
  ),
  NewCalendarFeed: members(
    {
      ...feed,
      path: {
        type: ['string', 'null'],
        description: 'The secret address, told once: null when a create is sent again.',
      },
    },
    { ...EXAMPLE, path: '/calendar/Zb1yMZQn0Vbq3nq7m0p4w5l1vY6n2cX8r9sT0uVwXyZ.ics' },
  ),
};
