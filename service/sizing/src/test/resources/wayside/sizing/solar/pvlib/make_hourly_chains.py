"""Makes hourly_chains.csv: the way from global irradiance to panel power by pvlib, hour by hour, as a second opinion.

Needs: pip install pvlib==0.13.1. Run: python make_hourly_chains.py > hourly_chains.csv
Twelve places, four dates of 2026, two planes. The sky is invented: a share of Haurwitz's clear sky. Sun by the NREL SPA at the
middle of each hour of UTC; diffuse by Erbs; planes by isotropic, Reindl (HDKR) and Perez 1990; glass by Fresnel (n 1.526);
cells by Sandia, insulated back, wind 1 m/s; power by the linear model, -0.4 %/K, 100 W.
"""
import pandas as pd
import pvlib

PLACES = [
    ("Reykjavik", 64.13, -21.9), ("Munich", 48.14, 11.58), ("Minneapolis", 44.98, -93.27), ("Lisbon", 38.72, -9.14),
    ("Albuquerque", 35.08, -106.65), ("Honolulu", 21.31, -157.86), ("Quito", -0.18, -78.47), ("Darwin", -12.46, 130.84),
    ("Windhoek", -22.56, 17.08), ("Perth", -31.95, 115.86), ("Hobart", -42.88, 147.33), ("Ushuaia", -54.8, -68.3),
]
DATES = ["2026-03-16", "2026-06-11", "2026-09-15", "2026-12-10"]
SHARES = [0.35, 0.6, 0.85]
AIR_C = 20.0


def chain(place, lat, lon, date, share, tilt, azimuth):
    times = pd.date_range(date, periods=24, freq="h", tz="UTC") + pd.Timedelta(minutes=30)
    sun = pvlib.solarposition.get_solarposition(times, lat, lon, altitude=0, method="nrel_numpy")
    zenith, sun_azimuth = sun["zenith"], sun["azimuth"]
    ghi = (share * pvlib.clearsky.haurwitz(zenith)["ghi"]).where(zenith < 85, 0)
    extra = pvlib.irradiance.get_extra_radiation(times, solar_constant=1367, method="spencer")
    parts = pvlib.irradiance.erbs(ghi, zenith, times)
    mass = pvlib.atmosphere.get_relative_airmass(zenith, "kastenyoung1989")

    def plane(model):
        return pvlib.irradiance.get_total_irradiance(
            tilt, azimuth, zenith, sun_azimuth, parts["dni"], ghi, parts["dhi"],
            dni_extra=extra, airmass=mass, albedo=0.2, model=model)["poa_global"]

    aoi = pvlib.irradiance.aoi(tilt, azimuth, zenith, sun_azimuth)
    reindl = plane("reindl")
    cell = pvlib.temperature.sapm_cell(reindl, AIR_C, 1.0, **pvlib.temperature.TEMPERATURE_MODEL_PARAMETERS["sapm"]["insulated_back_glass_polymer"])
    frame = pd.DataFrame({
        "zenith": zenith, "azimuth": sun_azimuth, "ghi": ghi, "dhi": parts["dhi"], "isotropic": plane("isotropic"),
        "reindl": reindl, "perez": plane("perez"), "iam": pvlib.iam.physical(aoi, n=1.526, K=4, L=0.002),
        "cell": cell, "power": pvlib.pvsystem.pvwatts_dc(reindl, cell, 100, -0.004)})
    for hour, row in enumerate(frame[ghi > 0].itertuples()):
        print(f"{place},{lat},{lon},{date},{row.Index.hour},{tilt},{azimuth},{row.zenith:.4f},{row.azimuth:.4f},{row.ghi:.3f},"
              f"{row.dhi:.3f},{row.isotropic:.3f},{row.reindl:.3f},{row.perez:.3f},{row.iam:.5f},{row.cell:.3f},{row.power:.4f}")


print(f"# pvlib {pvlib.__version__}, made by make_hourly_chains.py; angles [deg], irradiances [W/m2], cell [C], power [W]; air {AIR_C} C")
print("place,latitude,longitude,date,hour_utc,tilt,azimuth,sun_zenith,sun_azimuth,ghi,dhi,isotropic,reindl,perez,iam,cell,power")
for i, (name, latitude, longitude) in enumerate(PLACES):
    for j, day in enumerate(DATES):
        toward = 180 if latitude >= 0 else 0
        chain(name, latitude, longitude, day, SHARES[(i + j) % 3], 30, toward)
        chain(name, latitude, longitude, day, SHARES[(i + j) % 3], 45, 270)
