"""A sugarhouse whose truth is kept beside its book: what each row does to mass and sugar is worked out here by mass balance alone, and the
row is written as the crew would write it. Nothing of the program is asked.

Densities: ICUMSA SPS-4 (1998), from the table in tests/reference/sucrose_density.csv, interpolated; the program evaluates the equation.
"""
import collections
import csv
import itertools
import pathlib

LITRES = {"L": 1, "mL": 1e-3, "gal": 3.785411784, "qt": 0.946352946, "pt": 0.473176473, "cup": 0.2365882365, "impgal": 4.54609}
POUND = 0.45359237
HOT = 104  # degC, syrup in the pail where nobody said
DAY_BOOK = "time,what,value,unit,detail\n"


def _table():
    density = collections.defaultdict(list)
    place = pathlib.Path(__file__).parents[1] / "reference" / "sucrose_density.csv"
    for row in csv.DictReader(place.open()):
        if row["series"] == "icumsa":
            density[float(row["temperature_C"])].append((float(row["mass_percent"]), float(row["density_kg_m3"]) / 1000))
    return density


TABLE = _table()


def through(points, x):
    """The polynomial through all points, at x (Lagrange)."""
    whole = 0
    for i, (at, value) in enumerate(points):
        for j, (other, _) in enumerate(points):
            value *= (x - other) / (at - other) if i != j else 1
        whole += value
    return whole


def density(brix, celsius=20):
    """kg/L."""
    near = sorted(TABLE, key=lambda at: abs(at - celsius))[:1 if celsius in TABLE else 4]
    # The table has 12 sugars; the seven nearest carry the equation's sixth power.
    return through([(at, through(sorted(TABLE[at], key=lambda point: abs(point[0] - brix))[:7], brix)) for at in near], celsius)


class Stock:
    """Mass, and sugar by the way that it came: each way the set of all that it passed."""

    def __init__(self, mass=0.0, sugar=0.0, *way):
        self.mass = mass
        self.ways = collections.Counter({frozenset(way): sugar} if sugar else {})

    @property
    def sugar(self):
        return sum(self.ways.values())

    @property
    def brix(self):
        return 100 * self.sugar / self.mass if self.mass else 0

    @property
    def litres(self):
        return self.mass / density(self.brix) if self.mass else 0

    def scale(self, by):
        self.mass *= by
        for way in self.ways:
            self.ways[way] *= by

    def part(self, share):
        part = Stock(self.mass)
        part.ways.update(self.ways)
        part.scale(share)
        return part

    def take(self, share):
        part = self.part(share)
        self.scale(1 - share)
        if share > 1 - 1e-9:
            self.__init__()
        return part

    def add(self, other, *passed):
        self.mass += other.mass
        for way, sugar in other.ways.items():
            self.ways[way | frozenset(passed)] += sugar

    def passes(self, *passed):
        whole = Stock()
        whole.add(self, *passed)
        return whole

    def passed(self):
        """All that it passed, with the share of its sugar that did."""
        names = set(itertools.chain.from_iterable(way for way, sugar in self.ways.items() if sugar > 1e-12))
        return {name: sum(sugar for way, sugar in self.ways.items() if name in way) / self.sugar for name in names}


def measured(litres, brix, celsius, *way):
    mass = litres * density(brix, celsius)
    return Stock(mass, mass * brix / 100, *way)


def thinned(stock, litres):
    """The same sugar in so many litres."""
    low, high = 0, 75
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if litres * density(middle) * middle / 100 < stock.sugar else (low, middle)
    whole = stock.part(1)
    whole.mass = litres * density(high)
    return whole


class House:
    def __init__(self):
        self.book, self.shifts, self.night = [], [], None
        self.vessels, self.lots, self.drawn = {}, {}, {}
        self.pans, self.heel = Stock(), Stock()
        self.line = collections.Counter()  # of the season's sugar, kg
        self.buyers = collections.Counter()
        self.came = collections.defaultdict(Stock)  # all that ever came into a vessel: what comes again is the same sugar
        self.foam = []

    def row(self, time, deed, value="", unit="", /, *, shift=False, **details):
        detail = ";".join(f"{key.strip('_')}={said}" for key, said in details.items() if said is not None)
        (self.shifts[-1] if shift else self.book).append(f"{time},{deed},{'' if value is None else value},{unit or ''},{detail}\n")

    def vessel(self, time, name, kind, capacity, unit="L", **details):
        self.vessels[name] = Stock()
        self.row(time, "vessel", capacity, unit, name=name, kind=kind, **details)

    def share(self, name, value, unit, celsius=20):
        stock = self.vessels[name]
        if value is None:
            return 1
        if unit in ("lb", "kg"):
            return value * (POUND if unit == "lb" else 1) / stock.mass
        return value * LITRES[unit] * density(stock.brix, celsius) / stock.mass

    def take(self, name, value, unit, celsius=20):
        share = self.share(name, value, unit, celsius)
        assert share < 1 + 1e-6, (name, share)
        return self.vessels[name].take(min(1, share))

    def put(self, name, stock):
        fresh = Stock()
        fresh.ways.update({way: sugar for way, sugar in stock.ways.items() if ("vessel", name) not in way})
        self.came[name].add(fresh)
        self.vessels.setdefault(name, Stock()).add(stock, ("vessel", name))

    def gathered(self, time, litres, unit, to, name, brix, temp=None, **details):
        stock = measured(litres * LITRES[unit], brix, 20 if temp is None else temp, ("gathered", name, time))
        self.line["gathered"] += stock.sugar
        self.put(to, stock)
        self.row(time, "gathered", litres, unit, to=to, from_=name, brix=brix, temp=None if temp is None else f"{temp}degC", **details)

    def bought(self, time, value, unit, vessel, name, brix):
        stock = (Stock(value * POUND, value * POUND * brix / 100, ("bought", name, time)) if unit == "lb" else
                 measured(value * LITRES[unit], brix, 20, ("bought", name, time)))
        self.line["bought"] += stock.sugar
        self.put(vessel, stock)
        self.row(time, "bought", value, unit, what="syrup", from_=name, vessel=vessel, brix=brix)

    def moved(self, time, source, to, value=None, unit="", temp=None):
        self.put(to, self.take(source, value, unit, 20 if temp is None else temp))
        self.row(time, "moved", value, unit, from_=source, to=to, temp=None if temp is None else f"{temp}degC")

    def dipped(self, time, name, litres, brix=None):
        stock = self.vessels[name]
        before = stock.sugar
        stock.scale(litres / stock.litres)
        if brix is not None:
            stock.mass = litres * density(brix)
            by = stock.mass * brix / 100 / stock.sugar
            for way in stock.ways:
                stock.ways[way] *= by
        self.line["does not close"] += stock.sugar - before
        self.row(time, "dipped", litres, "L", in_=name, brix=brix)

    def concentrated(self, time, litres, source, to, brix):
        mass = litres * density(brix)
        made = self.vessels[source].take(mass * brix / 100 / self.vessels[source].sugar)
        made.mass = mass
        self.put(to, made)
        self.row(time, "concentrated", litres, "L", from_=source, to=to, brix=brix)

    def lost(self, time, value, unit, name, why):
        self.line["lost: " + why] += self.take(name, value, unit).sugar
        self.row(time, "lost", value, unit, from_=name, why=why)

    def sold(self, time, value, unit, vessel, to):
        self.line["sold in bulk"] += self.take(vessel, value, unit).sugar
        self.row(time, "sold", value, unit, what="syrup", to=to, vessel=vessel)

    # A shift. What stood in the pans is boiled on in each night.
    def light(self, time, date):
        self.night = date
        self.shifts.append([])
        self.drawn[date] = Stock()
        self.pans = self.pans.passes(("night", date))
        self.row(time, "lit", shift=True)

    def sap_in(self, time, feed, source, value=None, unit="", brix=None):
        if source in self.vessels:
            self.put(feed, self.take(source, value, unit))
        else:
            stock = measured(value * LITRES[unit], brix, 20, ("gathered", source, time))
            self.line["gathered"] += stock.sugar
            self.put(feed, stock)
        self.row(time, "sap_in", value, unit, shift=True, from_=source, brix=brix)

    def feeds(self, feed, litres=None):
        share = 1 if litres is None else litres / self.vessels[feed].litres
        self.pans.add(self.vessels[feed].take(share), ("night", self.night), *self.foam)

    def level(self, time, feed, litres=None):
        """Read at its end where `litres` are left; without: as full as it is."""
        if litres is not None:
            self.feeds(feed, self.vessels[feed].litres - litres)
        self.row(time, "tank_level", round(self.vessels[feed].litres, 9), "L", shift=True)

    def defoamer(self, time, kind):
        self.foam.append(("defoamer", kind, time))
        self.pans = self.pans.passes(self.foam[-1])
        self.row(time, "defoamer", 3, shift=True, kind=kind)

    def draw(self, time, value, unit, to, brix, temp=None):
        hot = measured(value * LITRES[unit], brix, HOT if temp is None else temp)
        share = hot.mass * brix / 100 / self.pans.sugar
        assert share < 1, (time, share)
        drawn = self.pans.take(share).passes(("night", self.night), ("draw", to, time))
        drawn.mass = hot.mass
        self.drawn[self.night].add(drawn)
        self.put(to, drawn)
        self.row(time, "draw_close", value, unit, shift=True, to=to, temp=None if temp is None else f"{temp}degC")
        self.row(time, "density_check", brix, "brix", shift=True, temp="20degC", cal="20degC")

    def over(self, time):
        self.row(time, "shift_end", shift=True)
        self.night = None

    def pans_emptied(self, time, *pails, **details):
        whole, volume = self.pans, sum(value * LITRES[unit] for value, unit, _ in pails)
        for value, unit, to in pails:
            part = thinned(whole.part(value * LITRES[unit] / volume), value * LITRES[unit])
            if to == "gone":
                self.line["lost: pans emptied"] += part.sugar
            else:
                self.put(to, part)
            self.row(time, "pans_emptied", value, unit, to=to, **details)
        self.pans = Stock()
        # Butter stays on the metal until it is washed.
        self.foam = [foam for foam in self.foam if foam[1] == "butter" and "washed" not in details]

    def press(self, begun, ended, litres, source, to, heel, aid, papers=None):
        if papers:
            self.clean_press()
        run = self.take(source, litres, "L")
        run.add(self.heel)
        run = run.passes(("press", to, begun), ("aid", aid, begun))
        self.heel = run.take(heel / run.litres)
        self.put(to, run)
        self.row(begun, "press_on", from_=source, to=to, aid=aid, papers=papers)
        self.row(ended, "press_off", litres, "L", heel=f"{heel}L")

    def clean_press(self, time=None):
        self.line["lost: press heel"] += self.heel.sugar
        self.heel = Stock()
        if time:
            self.row(time, "cleaned", vessel="press", with_="hot water")

    def packed(self, time, lot, source, count, size, unit, broken=0, **details):
        filled = self.take(source, size * (count + broken), unit)
        self.line["packed"] += filled.sugar * count / (count + broken)
        if broken:
            self.line["lost: broken"] += filled.sugar * broken / (count + broken)
        self.lots.setdefault(lot, Stock()).add(filled.part(count / (count + broken)))
        self.row(time, "packed", count, lot=lot, from_=source, size=f"{size}{unit}", broken=broken or None, **details)

    def shipped(self, time, count, lot, size, to, buyer=None):
        """`buyer`: as first written, where this row writes it otherwise. Less than nothing came back."""
        self.buyers[lot, size, buyer or to] += count
        who = {"to": to} if count > 0 else {"from_": to}
        self.row(time, "shipped" if count > 0 else "came_back", abs(count), lot=lot, size=size, **who)

    def write(self, folder):
        """The files, the day book first."""
        files = [folder / "book.csv"] + [folder / f"night{i}.csv" for i in range(len(self.shifts))]
        for file, rows in zip(files, [self.book, *self.shifts]):
            file.write_text(DAY_BOOK + "".join(rows))
        return files
