import type { MonthDay, YearlySpan } from '../types.ts';

/** Whether a day lies in a span of every year, both ends included; across New Year when `to` is before `from`. */
export function inYearlySpan(span: YearlySpan, monthDay: MonthDay): boolean {
  // "MM-DD" sorts as text.
  if (span.from <= span.to) return span.from <= monthDay && monthDay <= span.to;
  return monthDay >= span.from || monthDay <= span.to;
}
