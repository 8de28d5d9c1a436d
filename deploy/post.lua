-- wrk: posts the file named in BODY as JSON, with the header Prefer if PREFER says one.
local file = assert(io.open(os.getenv("BODY"), "rb"))
wrk.method = "POST"
wrk.body = file:read("*a")
wrk.headers["Content-Type"] = "application/json"
if os.getenv("PREFER") and os.getenv("PREFER") ~= "" then
  wrk.headers["Prefer"] = os.getenv("PREFER")
end
file:close()
