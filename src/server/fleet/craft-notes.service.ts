import { readPageQuery, type Page } from '../../../shared/wire/page-query.dto.js';
import { CraftNoteDto } from '../../../shared/wire/fleet-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { byOf } from './by-of.js';
import type { CraftNoteRow } from './database/craft-note.row.js';
import type { CraftNotes } from './database/craft-notes.js';
import type { CraftRow } from './database/craft.row.js';
import type { KeptThings } from './database/kept-things.js';
import type { KeptParts } from './kept.service.js';

export interface CraftNotesParts extends KeptParts {
  readonly craft: KeptThings<CraftRow>;
  readonly notes: CraftNotes;
}

/** Notes about craft, which are added and never changed: a note that was wrong gets another one behind it. */
export class CraftNotesService {
  constructor(private readonly parts: CraftNotesParts) {}

  async page(craftId: string, query: unknown): Promise<Page<object>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    await this.assertCraft(craftId);
    const rows = await this.parts.notes.page(craftId, request);
    const { items, next } = pageOf(rows, request, ({ recordedAt, id }) => ({ sort: recordedAt, id }));
    return { items: items.map(show), next };
  }

  async add(craftId: string, body: unknown, key: string | undefined, actor: Actor): Promise<object> {
    const { about, text, day = null, hourMeter = null } = readInput(readRecordInput(CraftNoteDto, body));
    const request = { operation: 'craft-note', key: readIdempotencyKey(key), body: { craftId, body } };
    const { id } = await this.parts.createOnce.run(request, async (noteId) => {
      await this.assertCraft(craftId);
      const by = byOf(actor, this.parts.clock.now());
      await this.parts.notes.add({ id: noteId, craftId, about, text, day, hourMeter, ...by });
    });
    const note = await this.parts.notes.find(id);
    return note === null ? refuse(404, 'There is no such note.') : show(note);
  }

  private async assertCraft(craftId: string): Promise<void> {
    if ((await this.parts.craft.find(craftId)) === null) refuse(404, 'There is no such craft.');
  }
}

function show({ craftId: craft, ...note }: CraftNoteRow): object {
  return { ...note, craft };
}
