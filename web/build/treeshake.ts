/** The engine is functions and tables, and so is its library of the compass: what nothing asks for may be left out. */
export const treeshake = {
  moduleSideEffects: (id: string): boolean => !/\/engine\/[^?]*\.(ts|json)$|\/magvar\//.test(id),
};
