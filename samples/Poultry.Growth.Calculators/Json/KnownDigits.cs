using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Poultry.Growth.Calculators.Json;

/// <summary>Writes a number to nine digits: more than the data know, and the same on every machine.</summary>
internal sealed class KnownDigits : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
        writer.WriteRawValue(value.ToString("G9", CultureInfo.InvariantCulture));
}
