export const contract = await (await fetch('../openapi.json')).json();

export const schemas = contract.components.schemas;

export const operations = Object.entries(contract.paths).flatMap(([path, item]) =>
  Object.entries(item).map(([method, operation]) => ({path, method: method.toUpperCase(), ...operation})));

/** A schema, or the one that it refers to. */
export function named(schema) {
  return schema.$ref ? schemas[pieceOf(schema)] : schema;
}

export function pieceOf(reference) {
  return reference.$ref.split('/').pop();
}
