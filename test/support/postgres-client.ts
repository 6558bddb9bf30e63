import pg from 'pg';

/** The address of another database of the same server. */
export function siblingOf(address: string, database: string): string {
  return address.replace(/[^/]*$/, database);
}

/** Runs one statement beside the databases of the service, as their owner. */
export async function runOnServer(address: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: siblingOf(address, 'postgres') });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
