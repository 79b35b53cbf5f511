"""Spanish words for days, months and stretches of time."""

MONTHS = {
    "enero": 1, "febrero": 2, "marzo": 3, "abril": 4, "mayo": 5, "junio": 6, "julio": 7, "agosto": 8, "septiembre": 9,
    "setiembre": 9, "octubre": 10, "noviembre": 11, "diciembre": 12,
}  # fmt: skip
WEEKDAYS = {"lunes": 0, "martes": 1, "miercoles": 2, "jueves": 3, "viernes": 4, "sabado": 5, "sabados": 5, "domingo": 6,
            "domingos": 6}  # fmt: skip
STRETCHES = {"dia": 1, "dias": 1, "semana": 7, "semanas": 7, "semanitas": 7, "quincena": 15, "mes": 30, "meses": 30,
             "mesecito": 30}  # fmt: skip
COUNTS = {"nunca": 0, "diario": 7, "todos": 7, "siempre": 7}
