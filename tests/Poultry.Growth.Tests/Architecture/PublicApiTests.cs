using System.IO.Compression;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Each room keeps the list of its own public members.</summary>
public partial class PublicApiTests
{
    [Fact]
    public void A_list_holds_the_members_of_its_room_only() =>
        Repository.Files("src", "PublicAPI.*.txt").SelectMany(Strays).ShouldBeNone();

    [Fact]
    public void Every_room_that_shows_a_type_has_a_list() =>
        Libraries.Core.GetExportedTypes().Select(type => House.RoomOf(type.Namespace!)).Distinct()
            .Where(room => !File.Exists(Repository.PathOf($"src/Poultry.Growth/PublicAPI.Unshipped.{room}.txt")))
            .ShouldBeNone();

    [Fact]
    public void The_version_to_come_is_later_than_the_one_whose_surface_is_kept()
    {
        foreach (Assembly library in new[] { Libraries.Core, Libraries.Files })
        {
            KeptVersion(library.GetName().Name!).Should().BeLessThan(new Version(XDocument.Load(Repository.PathOf("Directory.Build.props")).Descendants("Version").Single().Value));
        }
    }

    [Theory]
    [InlineData("static Poultry.Growth.Primitives.Age.operator +(Poultry.Growth.Primitives.Age age) -> Poultry.Growth.Curves.X", "Poultry.Growth.Primitives", true)]
    [InlineData("override Poultry.Growth.Primitives.Age.ToString() -> string!", "Poultry.Growth.Curves", false)]
    [InlineData("Poultry.Growth.PrimitivesToo.Age", "Poultry.Growth.Primitives", false)]
    public void A_line_belongs_to_the_room_of_its_type(string line, string room, bool belongs) => Belongs(line, room).Should().Be(belongs);

    private static Version KeptVersion(string package)
    {
        using ZipArchive kept = ZipFile.OpenRead(Repository.PathOf($"src/baseline/{package}.nupkg"));
        using Stream nuspec = kept.GetEntry(package + ".nuspec")!.Open();
        return new Version(XDocument.Load(nuspec).Descendants().Single(element => element.Name.LocalName == "version").Value);
    }

    private static IEnumerable<string> Strays(string file)
    {
        string[] folders = file.Split('/');
        string[] words = folders[^1].Split('.');
        string owner = words.Length == 4 ? folders[1] + "." + words[2] : folders[1];
        return File.ReadLines(Repository.PathOf(file))
            .Where(line => line.Length > 0 && line[0] != '#' && !Belongs(line, owner))
            .Select(line => $"{file}: {line}");
    }

    private static bool Belongs(string line, string owner) =>
        Modifiers().Replace(line, "").StartsWith(owner + ".", StringComparison.Ordinal);

    [GeneratedRegex("^((static|override|abstract|virtual|sealed|const|readonly|required) |~)*")]
    private static partial Regex Modifiers();
}
