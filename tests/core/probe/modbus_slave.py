# A Modbus RTU slave for the tests, by an implementation that is not ours. usage: modbus_slave.py PORT SLAVE...
# Input registers 0..: 1034, 65436, then 103.42 as float32 (high word first), 103.42 as float32 (low word first),
# -100 as int32 (high word first), and the slave's own number; holding registers: 3185 at 10. Nothing else exists.
import logging
import struct
import sys

from pymodbus.datastore import ModbusSequentialDataBlock, ModbusServerContext, ModbusSlaveContext
from pymodbus.server import StartSerialServer

try:  # Debian 12's version
    from pymodbus.transaction import ModbusRtuFramer as framer

    first, told = 0, {"zero_mode": True}
except ImportError:  # Debian 13's: the first register of a block is called 1
    from pymodbus.framer import FramerType

    framer, first, told = FramerType.RTU, 1, {}

logging.disable(logging.CRITICAL)
high, low = struct.unpack(">HH", struct.pack(">f", 103.42))


def slave(number):
    inputs = [1034, 65436, high, low, low, high, 0xFFFF, 0xFF9C, number]
    return ModbusSlaveContext(
        ir=ModbusSequentialDataBlock(first, inputs), hr=ModbusSequentialDataBlock(first + 10, [3185]), **told
    )


numbers = [int(n) for n in sys.argv[2:]]
context = ModbusServerContext(slaves={n: slave(n) for n in numbers}, single=False)
print("ready", flush=True)
StartSerialServer(context=context, framer=framer, port=sys.argv[1], baudrate=19200, timeout=0.01)
