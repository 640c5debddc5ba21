/** The engine is functions and tables: a file of it that nothing asks for may be left out. */
export const treeshake = { moduleSideEffects: (id: string): boolean => !/\/engine\/[^?]*\.(ts|json)$/.test(id) };
