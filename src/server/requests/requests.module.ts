import { Module } from '@nestjs/common';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';
import { RequestAnswers } from './request-answers.js';
import { RequestAnswersController } from './request-answers.controller.js';
import { RequestBook } from './request-book.js';
import { RequestDesk } from './request-desk.js';
import { RequestsController } from './requests.controller.js';
import { RequestsService } from './requests.service.js';
import { OpenRequests } from './open-requests.js';
import { ServedPapers } from './served-papers.js';

/** Subpoenas, preservation letters, records and access requests: from whom, due when, and what was produced. */
@Module({
  controllers: [RequestsController, RequestAnswersController],
  providers: [
    LegalRequestsRepository,
    RequestBook,
    RequestsService,
    RequestDesk,
    RequestAnswers,
    ServedPapers,
    OpenRequests,
  ],
  exports: [OpenRequests],
})
export class RequestsModule {}
