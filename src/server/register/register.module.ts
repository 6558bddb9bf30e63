import { Module } from '@nestjs/common';
import { RegisterRepository } from './database/register.repository.js';
import { HistoryController } from './history/history.controller.js';
import { IncidentHistoryService } from './history/history.service.js';
import { RegisterExports } from './register-exports.js';
import { RegisterController } from './register.controller.js';
import { RegisterService } from './register.service.js';

/** The list of all incidents, searched, filtered and exported. */
@Module({
  controllers: [RegisterController, HistoryController],
  providers: [RegisterRepository, RegisterService, RegisterExports, IncidentHistoryService],
})
export class RegisterModule {}
