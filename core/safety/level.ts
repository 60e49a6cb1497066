/** How a safety figure stands. Nothing here is ever called safe: in range means that this one rule found nothing. */
export type SafetyLevel = 'stop' | 'caution' | 'in range' | 'unknown';
