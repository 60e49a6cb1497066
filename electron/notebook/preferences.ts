import { defaultPreferences, Preferences } from '../../core/model/index.ts';
import type { Sql } from './sql.ts';

/** Each preference is a row of its own; one that is missing or no longer understood falls back to its default, and the others stand. */
export function readPreferences(sql: Sql): Preferences {
  let preferences = defaultPreferences;
  for (const row of sql.all('SELECT key, json FROM preference')) {
    const tried = Preferences.safeParse({ ...preferences, [String(row['key'])]: parsed(String(row['json'])) });
    if (tried.success) preferences = tried.data;
  }
  return preferences;
}

export function writePreferences(sql: Sql, preferences: Preferences): void {
  for (const [key, value] of Object.entries(preferences)) {
    sql.run(
      'INSERT INTO preference(key, json) VALUES (?, ?) ON CONFLICT(key) DO UPDATE SET json = excluded.json',
      key,
      JSON.stringify(value),
    );
  }
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}
