import type { Level } from '../../core/findings/finding.ts';

const levelWord: Record<Level, string> = {
  stop: 'Stop',
  caution: 'Caution',
  unknown: 'Not known',
  waiting: 'Waiting',
  ok: 'In range',
};

/** The sign of a level: octagon, triangle, dash, dotted ring, ring. Shape and colour together, and its word for those who hear it. */
export function Mark({ level }: { level: Level }) {
  return (
    <svg className={`mark ${level}`} width="14" height="14" viewBox="0 0 14 14" role="img" aria-label={levelWord[level]}>
      {level === 'stop' && <path d="M4.3.5h5.4l3.8 3.8v5.4l-3.8 3.8H4.3L.5 9.7V4.3z" />}
      {level === 'caution' && <path d="M7 .6 14 13H0z" />}
      {level === 'ok' && <circle cx="7" cy="7" r="4.6" />}
      {level === 'waiting' && <circle cx="7" cy="7" r="4.6" strokeDasharray="2.4 2.4" />}
      {level === 'unknown' && <path d="M2.5 7h9" />}
    </svg>
  );
}
