type Schema = Record<string, unknown>;

const count: Schema = { type: 'integer', minimum: 0 };

const backup: Schema = {
  type: 'object',
  additionalProperties: false,
  required: ['id', 'madeAt', 'folder', 'incidents', 'amendments', 'files', 'faults'],
  properties: {
    id: { type: 'string', format: 'uuid' },
    madeAt: { type: 'string', format: 'date-time' },
    folder: { type: 'string', description: 'Where the copy was put, on the machine of the service.' },
    incidents: count,
    amendments: count,
    files: count,
    faults: { ...count, description: 'What the check of the copy found wrong; 0 when all is as written.' },
  },
  examples: [
    {
      id: '5b0e0c0e-2f7e-4b9c-9d0d-8a4f6a1c7b10',
      madeAt: '2026-06-13T22:00:00.000Z',
      folder: '/mnt/backup/2026-06-13T22-00-00.000Z',
      incidents: 42,
      amendments: 1203,
      files: 217,
      faults: 0,
    },
  ],
};

/** The answers of the back-ups' route, by name. */
export const BACKUP_SCHEMAS: Record<string, Schema> = {
  CheckedBackupList: {
    type: 'object',
    additionalProperties: false,
    required: ['items'],
    properties: { items: { type: 'array', items: backup } },
  },
};
