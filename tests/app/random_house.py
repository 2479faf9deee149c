"""Houses by the dice, of which nobody chose the rows: vessels filled and emptied in any order and measure, nights with and without a gauge, pans
drained and pails put back, presses, packs and sales. Truth beside it as in known_house.py; the files as careless hands write them: names spelled
otherwise, zones, rows out of order, line ends, a byte-order mark, a row in two files.
"""
import datetime
import random
import zoneinfo

from known_house import LITRES, House, density

TANKS = {"Bush tank": "gather", "house tank": "hold", "Truck": "truck", "Sweet": "concentrate"}
SYRUP = {"drum 1": "drum", "Drum 2": "drum", "pail A": "pail", "pail B": "pail", "urn": "canner", "Filter box": "filter"}
SIZES = ((1, "pt"), (250, "mL"), (0.5, "gal"), (1, "qt"), (1, "cup"), (0.1, "impgal"))


class CarelessHouse(House):
    def __init__(self, dice, zone):
        super().__init__()
        self.dice, self.zone, self.at = dice, zoneinfo.ZoneInfo(zone), datetime.datetime(2027, 2, 20, 9, tzinfo=datetime.timezone.utc)

    def time(self, low=0, high=0):
        """Later by minutes, as the rows are given it."""
        self.at += datetime.timedelta(minutes=self.dice.randint(low, high))
        return self.at.strftime("%Y-%m-%dT%H:%M:%SZ")

    def row(self, time, deed, value="", unit="", /, *, shift=False, **details):
        dice = self.dice
        for key, said in details.items():
            if said in self.vessels and deed != "vessel" and key != "name":
                details[key] = dice.choice((said, said, said.upper(), said.replace(" ", "")))
        if dice.random() < 0.2:
            details["by"] = "Odile"
        if dice.random() < 0.1 and deed != "draw_close":
            details["entered"] = (self.at + datetime.timedelta(days=2)).strftime("%Y-%m-%dT%H:%M:%SZ")
        if dice.random() < 0.3:
            there = datetime.timezone(datetime.timedelta(minutes=dice.choice((-300, -240, 330))))
            time = datetime.datetime.fromisoformat(time.replace("Z", "+00:00")).astimezone(there).isoformat()
        super().row(time, deed, value, unit, shift=shift, **details)

    def some(self, name, low, high):
        """So much of a vessel, in a measure by the dice: the arguments of a row; None where it holds too little."""
        unit = self.dice.choice(("L", "gal", "impgal", "qt"))
        value = round(self.vessels[name].litres * self.dice.uniform(low, high) / LITRES[unit], 3)
        return (value, unit) if self.vessels[name].litres > 0.5 and value > 0 and self.share(name, value, unit) < 0.98 else None

    def filled(self, names, least):
        return [name for name in names if self.vessels[name].litres > least]

    def write(self, folder):
        files = []
        cut = self.dice.randrange(1, len(self.book))
        for name, rows in (("book.csv", self.book[:cut + 2]), ("more.csv", self.book[cut:]),
                           *((f"night{i}.csv", night) for i, night in enumerate(self.shifts))):
            moments = {}
            for row in rows:
                moments.setdefault(datetime.datetime.fromisoformat(row.split(",")[0].replace("Z", "+00:00")), []).append(row.strip())
            order = list(moments)
            self.dice.shuffle(order)
            end = self.dice.choice(("\n", "\r\n"))
            text = self.dice.choice(("", "\ufeff")) + end.join(["time,what,value,unit,detail", *(row for at in order for row in moments[at]), ""])
            files.append(folder / name)
            files[-1].write_bytes(text.encode())
        # A book that names the vessels of the other comes first.
        return files


def by_day(house):
    dice = house.dice
    tanks = house.filled(TANKS, 5)
    deed = dice.choice("ggggmmmcldbs" if tanks else "g")
    name = dice.choice(tanks) if tanks else None
    if deed == "g":
        unit = dice.choice(("L", "gal", "impgal", "qt"))
        house.gathered(house.time(1, 600), round(dice.uniform(50, 900) / LITRES[unit], 2), unit, dice.choice(list(TANKS)[:3]),
                       dice.choice(("north", "south", "A. Hill")) + str(dice.randint(1, 3)), round(dice.uniform(1.2, 3), 1),
                       temp=dice.choice((None, 10, 20)))
    elif deed == "b":
        house.bought(house.time(1, 600), dice.randint(10, 80), "lb", dice.choice(("drum 1", "Drum 2")), "Cousin", round(dice.uniform(65, 67.5), 1))
    elif deed == "d" and house.dips:
        house.dipped(house.time(1, 600), name, round(house.vessels[name].litres * dice.uniform(0.9, 1.05), 3))
    elif deed == "c":
        out, stock = round(dice.uniform(6, 12), 1), house.vessels[name]
        litres = round(stock.sugar * dice.uniform(0.2, 0.8) / (density(out) * out / 100))
        if name != "Sweet" and stock.brix < out - 1 and litres > 3:
            house.concentrated(house.time(1, 600), litres, name, "Sweet", out)
    elif part := house.some(name, 0.05, 0.5):
        if deed == "l":
            house.lost(house.time(1, 600), *part, name, dice.choice(("spilled", "sour", "overflow")))
        elif deed == "s":
            house.line["sold in bulk"] += house.take(name, *part).sugar
            house.row(house.time(1, 600), "sold", *part, what="sap", to="Neighbour", vessel=name)
        else:
            house.moved(house.time(1, 600), name, dice.choice([to for to in TANKS if to != name]), *(part if dice.random() < 0.7 else (None, "")))


def by_night(house):
    dice, feed = house.dice, "feed pan"
    house.at += datetime.timedelta(days=1)
    house.light(house.time(), house.at.astimezone(house.zone).strftime("%Y-%m-%d"))
    gauge, read = dice.random() < 0.5, False
    for _ in range(dice.randint(1, 4)):
        sources = house.filled([*TANKS, *(("pail A", "pail B") if dice.random() < 0.3 else ())], 2)
        for name in dice.sample(sources, min(len(sources), dice.randint(0, 2))):
            part = (None, "") if dice.random() < 0.4 else house.some(name, 0.1, 0.9)
            if not part:
                continue
            moment = house.time(1, 5)
            if gauge and read:
                house.level(moment, feed)
            house.sap_in(moment, feed, name, *part)
            if gauge:
                house.level(moment, feed)
            read = True
        if house.vessels[feed].litres < 3:
            continue
        if gauge:
            house.level(house.time(20, 60), feed, round(house.vessels[feed].litres * dice.uniform(0.2, 0.9), 2))
            if dice.random() < 0.3:
                house.level(house.time(1, 5), feed)
                house.defoamer(house.time(), dice.choice(("butter", "oil")))
        sugar = house.pans.sugar + (0 if gauge else house.vessels[feed].sugar)
        if sugar < 0.6:
            continue
        if not gauge:
            house.feeds(feed)
        brix, unit = round(dice.uniform(65.5, 68), 1), dice.choice(("L", "gal", "impgal", "qt"))
        litres = house.pans.sugar * dice.uniform(0.1, 0.6) / (brix / 100) / density(brix, 100)
        moment = house.time(5, 30)
        if gauge:
            house.level(moment, feed)
        house.draw(moment, round(litres / LITRES[unit], 3), unit, dice.choice(list(SYRUP)), brix, dice.choice((None, 100, 20)))
        house.time(41, 41)
    house.over(house.time(5, 20))
    if dice.random() < 0.4 and house.pans.sugar > 0.5 and house.vessels[feed].litres == 0:
        litres = house.pans.sugar / dice.uniform(0.05, 0.4)
        house.pans_emptied(house.time(1, 600), (round(litres * 0.4, 2), "L", "pail A"), (round(litres * 0.6, 2), "L", dice.choice(("pail B", "gone"))),
                           **({"washed": "yes"} if dice.random() < 0.5 else {}))


def bottled(house):
    dice = house.dice
    names = [name for name in house.filled(SYRUP, 1) if house.vessels[name].brix > 55]
    if not names:
        return
    name = dice.choice(names)
    to = dice.choice([other for other in SYRUP if other != name])
    deed, part = dice.choice("mprrrr"), house.some(name, 0.1, 0.9)
    if deed == "m" and part:
        house.moved(house.time(1, 600), name, to, *part)
    elif deed == "p" and part:
        litres = round(part[0] * LITRES[part[1]], 2)
        house.press(house.time(1, 600), house.time(1, 20), litres, name, to, round(litres * 0.1, 2), "aid 7", papers=dice.choice((None, "new")))
    elif deed == "r":
        size, unit = dice.choice(SIZES)
        count = int(house.vessels[name].litres * dice.uniform(0.1, 0.5) / (size * LITRES[unit]))
        if count > 1:
            lot = f"L{len(house.lots) + 1}"
            house.packed(house.time(1, 600), lot, name, count, size, unit, broken=dice.choice((0, 1)), capped="185degF")
            house.shipped(house.time(1, 600), dice.randint(1, count), lot, f"{size}{unit}", "Shop")


def random_house(seed, zone, dips=True):
    house = CarelessHouse(random.Random(seed), zone)
    house.dips = dips
    for name, kind in {**TANKS, "feed pan": "feed", **SYRUP}.items():
        house.vessel(house.time(), name, kind, 250 if name in SYRUP else 8000)
    for _ in range(house.dice.randint(2, 4)):
        for _ in range(house.dice.randint(3, 9)):
            by_day(house)
        if house.filled(TANKS, 60):
            by_night(house)
        for _ in range(house.dice.randint(0, 5)):
            bottled(house)
    return house
