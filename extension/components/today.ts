/** The day on which something is set by the buyer, as a date of the buyer's own zone: "2026-05-31". The core knows no clock. */
export function today(now = new Date()): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
