import { Inject, Injectable, Module, type OnModuleInit } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { expect, it } from 'vitest';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import { DatabaseModule } from '../../src/server/platform/database/database.module.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { describeEngines } from '../support/databases.js';
import { CreateNotes4102444800000, NOTES, ShelfRow } from './notes.js';

/** Writes as soon as the service is put together. */
@Injectable()
class Shelves implements OnModuleInit {
  constructor(@Inject(UnitOfWork) private readonly unitOfWork: UnitOfWork) {}

  async onModuleInit(): Promise<void> {
    await this.unitOfWork.run(() => this.unitOfWork.manager.insert(ShelfRow, { id: 's' }));
  }
}

@Module({ providers: [Shelves] })
class ShelvesModule {}

describeEngines('the service', { rows: NOTES.rows }, (desk) => {
  const start = (migrations = [...ALL_MIGRATIONS, CreateNotes4102444800000]) =>
    NestFactory.createApplicationContext(
      {
        module: ShelvesModule,
        imports: [DatabaseModule.with({ target: desk.target, rows: NOTES.rows, migrations })],
      },
      { logger: ['error', 'warn'], abortOnError: false },
    );

  it('finds the schema ready in every module, and lets go of the database when it closes', async () => {
    const app = await start();
    const unitOfWork = app.get(UnitOfWork);
    expect(await unitOfWork.manager.find(ShelfRow)).toEqual([{ id: 's' }]);
    await app.close();
    const outcome = unitOfWork.run(() => unitOfWork.manager.count(ShelfRow));
    await expect(outcome).rejects.toThrow();
    expect(await desk.plainSql('SELECT id FROM shelf')).toEqual([{ id: 's' }]);
  });

  it('does not start on a database of a later version', async () => {
    await expect(start([...ALL_MIGRATIONS])).rejects.toThrow('later version');
  });
});
