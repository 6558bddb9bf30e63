import type { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { CraftNoteRow } from './craft-note.row.js';

/** Maintenance, prior trips and inspections, craft by craft. */
export class CraftNotes {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** One more than the page holds, the newest first. */
  async page(craftId: string, { limit, after }: PageRequest): Promise<CraftNoteRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(CraftNoteRow, 'note')
      .where('note.craftId = :craftId', { craftId })
      .orderBy('note.recordedAt', 'DESC')
      .addOrderBy('note.id', 'DESC')
      .limit(limit + 1);
    if (after !== null) {
      const place = '(note.recordedAt < :sort OR (note.recordedAt = :sort AND note.id < :id))';
      query.andWhere(place, { ...after });
    }
    return query.getMany();
  }

  find(id: string): Promise<CraftNoteRow | null> {
    return this.unitOfWork.manager.findOneBy(CraftNoteRow, { id });
  }

  async add(note: CraftNoteRow): Promise<void> {
    await this.unitOfWork.manager.insert(CraftNoteRow, note);
  }
}
