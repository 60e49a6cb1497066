/**
 * Type by name, with what every system has instead. The bench's own faces go by other names in its page; they are free, and whoever has
 * them sees the very same letters.
 */
export const faces = {
  text: "'Source Sans 3', 'Source Sans 3 Variable', Arial, sans-serif",
  head: "'Source Serif 4', 'Source Serif 4 Variable', Georgia, serif",
} as const;
