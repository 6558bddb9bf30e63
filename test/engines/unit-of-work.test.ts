import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { aNote, NoteRow, NOTES, ShelfRow } from './notes.js';

describeEngines('a unit of work', NOTES, (desk) => {
  it('writes', async () => {
    await desk.unitOfWork.run(async () => {
      await desk.unitOfWork.manager.insert(ShelfRow, { id: 's' });
      await desk.unitOfWork.manager.insert(NoteRow, aNote());
    });
    expect(await desk.unitOfWork.manager.count(NoteRow)).toBe(1);
  });
});
