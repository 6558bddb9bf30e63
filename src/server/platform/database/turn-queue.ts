import { DatabaseError } from './database-errors.js';

interface Waiting {
  places: number;
  begin: () => void;
}

/**
 * A first-in-first-out queue for a number of places. Whoever asks for several waits until so many are free, and nobody
 * who came later slips past.
 */
export class TurnQueue {
  private free: number;
  private readonly waiting: Waiting[] = [];

  constructor(
    readonly places: number,
    private readonly limitMs: number,
  ) {
    this.free = places;
  }

  /**
   * Does the work when its turn comes.
   * @throws DatabaseError DATABASE.BUSY, naming the wait, when the turn has not come within the limit
   */
  async hold<T>(places: number, work: () => Promise<T>): Promise<T> {
    await this.turn(places);
    try {
      return await work();
    } finally {
      this.free += places;
      this.admit();
    }
  }

  private turn(places: number): Promise<void> {
    return new Promise((resolve, reject) => {
      const entry: Waiting = {
        places,
        begin: () => {
          clearTimeout(timer);
          resolve();
        },
      };
      const timer = setTimeout(() => {
        this.waiting.splice(this.waiting.indexOf(entry), 1);
        reject(new DatabaseError('DATABASE.BUSY', this.describeWait()));
        this.admit();
      }, this.limitMs);
      this.waiting.push(entry);
      this.admit();
    });
  }

  private describeWait(): string {
    const inLine = this.waiting.length;
    return `Waited ${this.limitMs} ms for the turn to write; ${inLine} more in line. Nothing was changed: try again.`;
  }

  private admit(): void {
    for (let next = this.waiting[0]; next && next.places <= this.free; next = this.waiting[0]) {
      this.waiting.shift();
      this.free -= next.places;
      next.begin();
    }
  }
}
