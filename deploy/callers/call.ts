// Asks the service through types that were made of its contract; ends badly where an answer is not what the JSON says.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import createClient from "openapi-fetch";
import type { components, paths } from "./wayside.js";

type Schemas = components["schemas"];

const [url, examples] = process.argv.slice(2);
const client = createClient<paths>({ baseUrl: url });

async function raw(operation: string, body: unknown): Promise<unknown> {
  const headers = { "Content-Type": "application/json" };
  return (await fetch(`${url}/v1/${operation}`, { method: "POST", headers, body: JSON.stringify(body) })).json();
}

function example<T>(name: string): T {
  return JSON.parse(readFileSync(`${examples}/${name}.request.json`, "utf8")) as T;
}

const budget: Schemas["EnergyBudgetRequest"] = {
  loads: [{ name: "kettle", supply: "ac", powerW: 1200, hoursPerDay: 0.2 }],
};
const day = await client.POST("/v1/energy-budget", { body: budget });
assert.deepEqual(day.data, await raw("energy-budget", budget));

const wanted = example<Schemas["RecommendationRequest"]>("recommendation");
const system = await client.POST("/v1/recommendation", { body: wanted });
assert.deepEqual(system.data, await raw("recommendation", wanted));
assert.ok(system.data !== undefined && system.data.battery.nominalEnergyWh > 0);

const refused = await client.POST("/v1/energy-budget", {
  body: { loads: [{ name: "fridge", powerW: 45, hoursPerDay: 25 }] },
});
assert.equal(refused.error?.errors?.[0]?.code, "out-of-range");
assert.equal(refused.error?.errors?.[0]?.maximum, 24);
