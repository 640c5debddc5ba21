/** The engine is functions and tables, and so are its libraries of zones and of the compass: what nothing asks for may be left out. */
export const treeshake = { moduleSideEffects: (id: string): boolean => !/\/engine\/[^?]*\.(ts|json)$|\/tz-lookup\/|\/magvar\//.test(id) };
