/** The law that compares what design, sheet, plan and JSON tell. */
export const OUTPUTS = 'every output tells the same hours';
