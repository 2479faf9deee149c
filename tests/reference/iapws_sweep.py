# Prints values of an independent implementation of the IAPWS formulations, for water_reference_test.
# kind, pressure in kPa, temperature in kelvin, value
from iapws import IAPWS95
from iapws.iapws97 import _PSat_T, _TSat_P

for step in range(200):
    pressure = 0.6113 * (22000 / 0.6113) ** (step / 199)  # kPa, evenly in its logarithm
    print(f"boiling,{pressure!r},{float(_TSat_P(pressure / 1000))!r},0")
for step in range(180):
    temperature = 273.16 + 2.05 * step
    print(f"saturation,{float(_PSat_T(temperature)) * 1000!r},{temperature!r},0")
for celsius in (0.02, 10, 20, 40, 60, 80, 90, 95, 100, 105, 110):
    temperature = celsius + 273.15
    liquid, steam = IAPWS95(T=temperature, x=0), IAPWS95(T=temperature, x=1)
    print(f"latent,{float(liquid.P) * 1000!r},{temperature!r},{float(steam.h - liquid.h)!r}")
    print(f"density,{float(liquid.P) * 1000!r},{temperature!r},{float(liquid.rho)!r}")
