import { Injectable } from '@nestjs/common';

/** The one clock of the service, so that a test can put another in its place. */
@Injectable()
export class Clock {
  /** RFC 3339 in UTC, to the millisecond. */
  now(): string {
    return new Date().toISOString();
  }
}
