import { describe, expect, it } from 'vitest';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { evidenceFolderOf, readEvidenceConfig } from '../../src/server/platform/evidence-config.js';

const SQLITE: DatabaseTarget = { engine: 'sqlite', file: '/srv/desk/var/desk.sqlite' };
const POSTGRES: DatabaseTarget = { engine: 'postgres', url: 'postgres://db/desk' };
const MIB = 1024 * 1024;

it.each<[string, string | undefined, DatabaseTarget, string]>([
  ['beside the SQLite file', undefined, SQLITE, '/srv/desk/var/evidence'],
  ['in the folder of the project', '', POSTGRES, '/srv/desk/var/evidence'],
  ['where it is named', '/mnt/evidence', POSTGRES, '/mnt/evidence'],
  ['where it is named from the project', 'disk/evidence', SQLITE, '/srv/desk/disk/evidence'],
])('evidence lies %s', (_where, named, target, folder) => {
  expect(evidenceFolderOf(named, target, '/srv/desk')).toBe(folder);
});

describe('how large a file may be', () => {
  const read = (environment: Record<string, string>) => {
    const faults: string[] = [];
    const { longestBytes } = readEvidenceConfig(environment, SQLITE, '/srv/desk', faults);
    return { longestBytes, faults };
  };

  it('is set by kind', () => {
    expect(read({ EVIDENCE_VIDEO_MIB: '4096' })).toEqual({
      longestBytes: { photo: 30 * MIB, video: 4096 * MIB, audio: 512 * MIB, document: 50 * MIB },
      faults: [],
    });
  });

  it.each(['0', '-1', '1.5', 'much', '', '1e9'])('is not %s', (value) => {
    const { faults } = read({ EVIDENCE_PHOTO_MIB: value, EVIDENCE_AUDIO_MIB: value });
    expect(faults.map((fault) => fault.split(' ')[0])).toEqual(['EVIDENCE_PHOTO_MIB', 'EVIDENCE_AUDIO_MIB']);
  });
});
