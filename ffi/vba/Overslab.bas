Attribute VB_Name = "Overslab"
Option Explicit

' Overslab in Excel: worksheet functions that call the library overslab-0.dll, which lies in the folder of this workbook
' (or add-in). Made from the table of operations; do not edit.
'
' OVS_<NAME>_US and _SI give the results; a bare number is in the unit that the argument's name ends with, a text such as
' "2 1/2 in" says its own. What is refused is an error value: #NUM! where a number lies outside its range, else #VALUE!.
' _WHY with the same arguments gives the reason, or the notes on the result, or an empty text. _GET gives one result by name;
' "names" gives the names. dll_... are the functions of the library themselves, for macros; units stand in their arguments.
'
' For 64-bit Office on Windows. In a text that crosses to the library every character beyond ASCII is escaped.

#If VBA7 Then
Private Declare PtrSafe Function dll_load Lib "kernel32" Alias "LoadLibraryW" (ByVal file As LongPtr) As LongPtr
Private Declare PtrSafe Function dll_abi_version Lib "overslab-0.dll" Alias "ovs_abi_version" () As Long
Private Declare PtrSafe Function dll_version Lib "overslab-0.dll" Alias "ovs_version" (ByRef text_value As Byte, ByVal text_len As Long) As Long
Private Declare PtrSafe Function dll_sheet_values Lib "overslab-0.dll" Alias "ovs_sheet_values" (ByVal request As String, ByVal request_len As Long, ByRef numbers As Double, ByRef kinds As Long, ByVal capacity As Long, ByRef rows As Long, ByRef columns As Long, ByRef texts As Byte, ByVal texts_len As Long, ByRef needed As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_rod_elevation_us Lib "overslab-0.dll" Alias "ovs_rod_elevation_us" (ByVal benchmark_ft As Double, ByVal backsight_ft As Double, ByVal rod_ft As Double, ByRef elevation_ft As Double, ByRef height_of_instrument_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_rod_elevation_si Lib "overslab-0.dll" Alias "ovs_rod_elevation_si" (ByVal benchmark_m As Double, ByVal backsight_m As Double, ByVal rod_m As Double, ByRef elevation_m As Double, ByRef height_of_instrument_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_fall_us Lib "overslab-0.dll" Alias "ovs_fall_us" (ByVal drop_in As Double, ByVal run_ft As Double, ByRef fall_in_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_fall_si Lib "overslab-0.dll" Alias "ovs_fall_si" (ByVal drop_mm As Double, ByVal run_m As Double, ByRef fall_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drop_us Lib "overslab-0.dll" Alias "ovs_drop_us" (ByVal fall_in_per_ft As Double, ByVal run_ft As Double, ByRef drop_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drop_si Lib "overslab-0.dll" Alias "ovs_drop_si" (ByVal fall_percent As Double, ByVal run_m As Double, ByRef drop_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_triangular_prism_us Lib "overslab-0.dll" Alias "ovs_triangular_prism_us" (ByVal area_ft2 As Double, ByVal thickness_1_in As Double, ByVal thickness_2_in As Double, ByVal thickness_3_in As Double, ByRef net_ft3 As Double, ByRef fill_ft3 As Double, ByRef high_ft3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_triangular_prism_si Lib "overslab-0.dll" Alias "ovs_triangular_prism_si" (ByVal area_m2 As Double, ByVal thickness_1_mm As Double, ByVal thickness_2_mm As Double, ByVal thickness_3_mm As Double, ByRef net_m3 As Double, ByRef fill_m3 As Double, ByRef high_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_condition_factor_us Lib "overslab-0.dll" Alias "ovs_condition_factor_us" (ByVal condition As Long, ByRef factor_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_condition_factor_si Lib "overslab-0.dll" Alias "ovs_condition_factor_si" (ByVal condition As Long, ByRef factor_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_required_us Lib "overslab-0.dll" Alias "ovs_overlay_required_us" (ByVal bond As Long, ByVal required_new_in As Double, ByVal required_old_in As Double, ByVal old_slab_in As Double, ByVal condition_ratio As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_required_si Lib "overslab-0.dll" Alias "ovs_overlay_required_si" (ByVal bond As Long, ByVal required_new_mm As Double, ByVal required_old_mm As Double, ByVal old_slab_mm As Double, ByVal condition_ratio As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_slab_equivalent_us Lib "overslab-0.dll" Alias "ovs_slab_equivalent_us" (ByVal bond As Long, ByVal overlay_in As Double, ByVal old_slab_in As Double, ByVal condition_ratio As Double, ByRef equivalent_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_slab_equivalent_si Lib "overslab-0.dll" Alias "ovs_slab_equivalent_si" (ByVal bond As Long, ByVal overlay_mm As Double, ByVal old_slab_mm As Double, ByVal condition_ratio As Double, ByRef equivalent_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_effective_bonded_us Lib "overslab-0.dll" Alias "ovs_overlay_effective_bonded_us" (ByVal required_in As Double, ByVal old_slab_in As Double, ByVal joints_ratio As Double, ByVal durability_ratio As Double, ByVal fatigue_ratio As Double, ByRef effective_in As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_effective_bonded_si Lib "overslab-0.dll" Alias "ovs_overlay_effective_bonded_si" (ByVal required_mm As Double, ByVal old_slab_mm As Double, ByVal joints_ratio As Double, ByVal durability_ratio As Double, ByVal fatigue_ratio As Double, ByRef effective_mm As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_effective_unbonded_us Lib "overslab-0.dll" Alias "ovs_overlay_effective_unbonded_us" (ByVal required_in As Double, ByVal old_slab_in As Double, ByVal joints_ratio As Double, ByRef effective_in As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_overlay_effective_unbonded_si Lib "overslab-0.dll" Alias "ovs_overlay_effective_unbonded_si" (ByVal required_mm As Double, ByVal old_slab_mm As Double, ByVal joints_ratio As Double, ByRef effective_mm As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_modulus_us Lib "overslab-0.dll" Alias "ovs_concrete_modulus_us" (ByVal strength_psi As Double, ByRef modulus_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_modulus_si Lib "overslab-0.dll" Alias "ovs_concrete_modulus_si" (ByVal strength_mpa As Double, ByRef modulus_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_modulus_by_density_us Lib "overslab-0.dll" Alias "ovs_concrete_modulus_by_density_us" (ByVal strength_psi As Double, ByVal density_lb_per_ft3 As Double, ByRef modulus_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_modulus_by_density_si Lib "overslab-0.dll" Alias "ovs_concrete_modulus_by_density_si" (ByVal strength_mpa As Double, ByVal density_kg_per_m3 As Double, ByRef modulus_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_rupture_us Lib "overslab-0.dll" Alias "ovs_concrete_rupture_us" (ByVal strength_psi As Double, ByVal formula As Long, ByRef rupture_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_concrete_rupture_si Lib "overslab-0.dll" Alias "ovs_concrete_rupture_si" (ByVal strength_mpa As Double, ByVal formula As Long, ByRef rupture_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_bearing_ratio_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_bearing_ratio_us" (ByVal bearing_ratio_percent As Double, ByVal source As Long, ByRef subgrade_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_bearing_ratio_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_bearing_ratio_si" (ByVal bearing_ratio_percent As Double, ByVal source As Long, ByRef subgrade_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_resilient_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_resilient_us" (ByVal resilient_psi As Double, ByRef subgrade_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_resilient_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_resilient_si" (ByVal resilient_mpa As Double, ByRef subgrade_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_soil_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_soil_us" (ByVal soil As Long, ByRef least_pci As Double, ByRef greatest_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_from_soil_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_soil_si" (ByVal soil As Long, ByRef least_mpa_per_m As Double, ByRef greatest_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_with_subbase_us Lib "overslab-0.dll" Alias "ovs_subgrade_with_subbase_us" (ByVal subgrade_pci As Double, ByVal thickness_in As Double, ByVal kind As Long, ByRef top_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_subgrade_with_subbase_si Lib "overslab-0.dll" Alias "ovs_subgrade_with_subbase_si" (ByVal subgrade_mpa_per_m As Double, ByVal thickness_mm As Double, ByVal kind As Long, ByRef top_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_stiffness_radius_us Lib "overslab-0.dll" Alias "ovs_stiffness_radius_us" (ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_stiffness_radius_si Lib "overslab-0.dll" Alias "ovs_stiffness_radius_si" (ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_contact_radius_us Lib "overslab-0.dll" Alias "ovs_contact_radius_us" (ByVal load_lbf As Double, ByVal pressure_psi As Double, ByRef radius_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_contact_radius_si Lib "overslab-0.dll" Alias "ovs_contact_radius_si" (ByVal load_kn As Double, ByVal pressure_kpa As Double, ByRef radius_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_contact_radius_dual_us Lib "overslab-0.dll" Alias "ovs_contact_radius_dual_us" (ByVal load_lbf As Double, ByVal pressure_psi As Double, ByVal spacing_in As Double, ByRef radius_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_contact_radius_dual_si Lib "overslab-0.dll" Alias "ovs_contact_radius_dual_si" (ByVal load_kn As Double, ByVal pressure_kpa As Double, ByVal spacing_mm As Double, ByRef radius_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_equivalent_radius_us Lib "overslab-0.dll" Alias "ovs_equivalent_radius_us" (ByVal radius_in As Double, ByVal thickness_in As Double, ByRef equivalent_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_equivalent_radius_si Lib "overslab-0.dll" Alias "ovs_equivalent_radius_si" (ByVal radius_mm As Double, ByVal thickness_mm As Double, ByRef equivalent_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_interior_load_us Lib "overslab-0.dll" Alias "ovs_interior_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_interior_load_si Lib "overslab-0.dll" Alias "ovs_interior_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_edge_load_us Lib "overslab-0.dll" Alias "ovs_edge_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal footprint As Long, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_edge_load_si Lib "overslab-0.dll" Alias "ovs_edge_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal footprint As Long, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_edge_load_1926_us Lib "overslab-0.dll" Alias "ovs_edge_load_1926_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal subgrade_pci As Double, ByRef stress_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_edge_load_1926_si Lib "overslab-0.dll" Alias "ovs_edge_load_1926_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal subgrade_mpa_per_m As Double, ByRef stress_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_corner_load_us Lib "overslab-0.dll" Alias "ovs_corner_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal formula As Long, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_corner_load_si Lib "overslab-0.dll" Alias "ovs_corner_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal formula As Long, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_corner_crack_us Lib "overslab-0.dll" Alias "ovs_corner_crack_us" (ByVal radius_in As Double, ByVal stiffness_in As Double, ByVal formula As Long, ByRef distance_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_corner_crack_si Lib "overslab-0.dll" Alias "ovs_corner_crack_si" (ByVal radius_mm As Double, ByVal stiffness_mm As Double, ByVal formula As Long, ByRef distance_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_load_influence_us Lib "overslab-0.dll" Alias "ovs_load_influence_us" (ByVal distance_in As Double, ByVal radius_in As Double, ByVal stiffness_in As Double, ByVal poisson_ratio As Double, ByRef deflection_ratio As Double, ByRef radial_ratio As Double, ByRef tangential_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_load_influence_si Lib "overslab-0.dll" Alias "ovs_load_influence_si" (ByVal distance_mm As Double, ByVal radius_mm As Double, ByVal stiffness_mm As Double, ByVal poisson_ratio As Double, ByRef deflection_ratio As Double, ByRef radial_ratio As Double, ByRef tangential_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_safety_factors_us Lib "overslab-0.dll" Alias "ovs_safety_factors_us" (ByVal kind As Long, ByRef least_ratio As Double, ByRef usual_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_safety_factors_si Lib "overslab-0.dll" Alias "ovs_safety_factors_si" (ByVal kind As Long, ByRef least_ratio As Double, ByRef usual_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_allowable_stress_us Lib "overslab-0.dll" Alias "ovs_allowable_stress_us" (ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef allowable_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_allowable_stress_si Lib "overslab-0.dll" Alias "ovs_allowable_stress_si" (ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef allowable_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_allowable_load_us Lib "overslab-0.dll" Alias "ovs_allowable_load_us" (ByVal position As Long, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef load_lbf As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_allowable_load_si Lib "overslab-0.dll" Alias "ovs_allowable_load_si" (ByVal position As Long, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef load_kn As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_uniform_load_us Lib "overslab-0.dll" Alias "ovs_uniform_load_us" (ByVal thickness_in As Double, ByVal subgrade_pci As Double, ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef load_psf As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_uniform_load_si Lib "overslab-0.dll" Alias "ovs_uniform_load_si" (ByVal thickness_mm As Double, ByVal subgrade_mpa_per_m As Double, ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef load_kpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_wall_load_us Lib "overslab-0.dll" Alias "ovs_wall_load_us" (ByVal thickness_in As Double, ByVal subgrade_pci As Double, ByVal strength_psi As Double, ByVal place As Long, ByRef load_lbf_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_wall_load_si Lib "overslab-0.dll" Alias "ovs_wall_load_si" (ByVal thickness_mm As Double, ByVal subgrade_mpa_per_m As Double, ByVal strength_mpa As Double, ByVal place As Long, ByRef load_kn_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_curling_coefficient_us Lib "overslab-0.dll" Alias "ovs_curling_coefficient_us" (ByVal side_ft As Double, ByVal stiffness_in As Double, ByRef coefficient_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_curling_coefficient_si Lib "overslab-0.dll" Alias "ovs_curling_coefficient_si" (ByVal side_m As Double, ByVal stiffness_mm As Double, ByRef coefficient_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_curling_stress_us Lib "overslab-0.dll" Alias "ovs_curling_stress_us" (ByVal length_ft As Double, ByVal width_ft As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal expansion_per_degf As Double, ByVal difference_degf As Double, ByRef interior_length_psi As Double, ByRef interior_width_psi As Double, ByRef edge_length_psi As Double, ByRef edge_width_psi As Double, ByRef of_length_ratio As Double, ByRef of_width_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_curling_stress_si Lib "overslab-0.dll" Alias "ovs_curling_stress_si" (ByVal length_m As Double, ByVal width_m As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal expansion_per_degc As Double, ByVal difference_k As Double, ByRef interior_length_mpa As Double, ByRef interior_width_mpa As Double, ByRef edge_length_mpa As Double, ByRef edge_width_mpa As Double, ByRef of_length_ratio As Double, ByRef of_width_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_two_layers_us Lib "overslab-0.dll" Alias "ovs_two_layers_us" (ByVal bond As Long, ByVal overlay_in As Double, ByVal overlay_modulus_psi As Double, ByVal old_slab_in As Double, ByVal old_modulus_psi As Double, ByRef equivalent_in As Double, ByRef overlay_share_ratio As Double, ByRef overlay_top_ratio As Double, ByRef overlay_bottom_ratio As Double, ByRef old_top_ratio As Double, ByRef old_bottom_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_two_layers_si Lib "overslab-0.dll" Alias "ovs_two_layers_si" (ByVal bond As Long, ByVal overlay_mm As Double, ByVal overlay_modulus_mpa As Double, ByVal old_slab_mm As Double, ByVal old_modulus_mpa As Double, ByRef equivalent_mm As Double, ByRef overlay_share_ratio As Double, ByRef overlay_top_ratio As Double, ByRef overlay_bottom_ratio As Double, ByRef old_top_ratio As Double, ByRef old_bottom_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_moisture_tests_us Lib "overslab-0.dll" Alias "ovs_moisture_tests_us" (ByVal area_ft2 As Double, ByVal thickness_in As Double, ByVal drying As Long, ByRef count As Long, ByRef depth_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_moisture_tests_si Lib "overslab-0.dll" Alias "ovs_moisture_tests_si" (ByVal area_m2 As Double, ByVal thickness_mm As Double, ByVal drying As Long, ByRef count As Long, ByRef depth_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drying_time_us Lib "overslab-0.dll" Alias "ovs_drying_time_us" (ByVal thickness_in As Double, ByRef least_d As Double, ByRef greatest_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drying_time_si Lib "overslab-0.dll" Alias "ovs_drying_time_si" (ByVal thickness_mm As Double, ByRef least_d As Double, ByRef greatest_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drying_time_by_water_us Lib "overslab-0.dll" Alias "ovs_drying_time_by_water_us" (ByVal water_cement_w_per_cm As Double, ByRef time_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_drying_time_by_water_si Lib "overslab-0.dll" Alias "ovs_drying_time_by_water_si" (ByVal water_cement_w_per_cm As Double, ByRef time_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_vapour_emission_us Lib "overslab-0.dll" Alias "ovs_vapour_emission_us" (ByVal gain_g As Double, ByVal area_ft2 As Double, ByVal time_h As Double, ByRef emission_lb_per_1000ft2_24h As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_vapour_emission_si Lib "overslab-0.dll" Alias "ovs_vapour_emission_si" (ByVal gain_g As Double, ByVal area_m2 As Double, ByVal time_h As Double, ByRef emission_g_per_m2_24h As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_added_weight_us Lib "overslab-0.dll" Alias "ovs_added_weight_us" (ByVal thickness_in As Double, ByVal density_lb_per_ft3 As Double, ByVal support As Long, ByRef weight_psf As Double, ByRef next_value As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_added_weight_si Lib "overslab-0.dll" Alias "ovs_added_weight_si" (ByVal thickness_mm As Double, ByVal density_kg_per_m3 As Double, ByVal support As Long, ByRef weight_kpa As Double, ByRef next_value As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_puddle_fall_us Lib "overslab-0.dll" Alias "ovs_puddle_fall_us" (ByVal wave_height_in As Double, ByVal wave_length_ft As Double, ByRef fall_in_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_puddle_fall_si Lib "overslab-0.dll" Alias "ovs_puddle_fall_si" (ByVal wave_height_mm As Double, ByVal wave_length_m As Double, ByRef fall_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_puddle_depth_us Lib "overslab-0.dll" Alias "ovs_puddle_depth_us" (ByVal wave_height_in As Double, ByVal wave_length_ft As Double, ByVal fall_in_per_ft As Double, ByRef depth_in As Double, ByRef greatest_wave_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_puddle_depth_si Lib "overslab-0.dll" Alias "ovs_puddle_depth_si" (ByVal wave_height_mm As Double, ByVal wave_length_m As Double, ByVal fall_percent As Double, ByRef depth_mm As Double, ByRef greatest_wave_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_runoff_us Lib "overslab-0.dll" Alias "ovs_runoff_us" (ByVal area_ft2 As Double, ByVal rain_in_per_h As Double, ByVal coefficient_percent As Double, ByRef flow_gal_per_min As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_runoff_si Lib "overslab-0.dll" Alias "ovs_runoff_si" (ByVal area_m2 As Double, ByVal rain_mm_per_h As Double, ByVal coefficient_percent As Double, ByRef flow_l_per_s As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_crest_clearance_us Lib "overslab-0.dll" Alias "ovs_crest_clearance_us" (ByVal wheelbase_in As Double, ByVal change_percent As Double, ByRef lost_in As Double, ByRef exact_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_crest_clearance_si Lib "overslab-0.dll" Alias "ovs_crest_clearance_si" (ByVal wheelbase_mm As Double, ByVal change_percent As Double, ByRef lost_mm As Double, ByRef exact_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_sag_break_us Lib "overslab-0.dll" Alias "ovs_sag_break_us" (ByVal overhang_in As Double, ByVal bumper_in As Double, ByRef change_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_sag_break_si Lib "overslab-0.dll" Alias "ovs_sag_break_si" (ByVal overhang_mm As Double, ByVal bumper_mm As Double, ByRef change_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_block_us Lib "overslab-0.dll" Alias "ovs_block_us" (ByVal length_ft As Double, ByVal width_ft As Double, ByVal depth_in As Double, ByRef volume_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_block_si Lib "overslab-0.dll" Alias "ovs_block_si" (ByVal length_m As Double, ByVal width_m As Double, ByVal depth_mm As Double, ByRef volume_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_prismoid_us Lib "overslab-0.dll" Alias "ovs_prismoid_us" (ByVal length_ft As Double, ByVal first_ft2 As Double, ByVal middle_ft2 As Double, ByVal last_ft2 As Double, ByRef volume_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_prismoid_si Lib "overslab-0.dll" Alias "ovs_prismoid_si" (ByVal length_m As Double, ByVal first_m2 As Double, ByVal middle_m2 As Double, ByVal last_m2 As Double, ByRef volume_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_trucks_us Lib "overslab-0.dll" Alias "ovs_trucks_us" (ByVal ordered_yd3 As Double, ByVal capacity_yd3 As Double, ByRef loads As Long, ByRef last_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_trucks_si Lib "overslab-0.dll" Alias "ovs_trucks_si" (ByVal ordered_m3 As Double, ByVal capacity_m3 As Double, ByRef loads As Long, ByRef last_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
#Else
Private Declare Function dll_load Lib "kernel32" Alias "LoadLibraryW" (ByVal file As Long) As Long
Private Declare Function dll_abi_version Lib "overslab-0.dll" Alias "ovs_abi_version" () As Long
Private Declare Function dll_version Lib "overslab-0.dll" Alias "ovs_version" (ByRef text_value As Byte, ByVal text_len As Long) As Long
Private Declare Function dll_sheet_values Lib "overslab-0.dll" Alias "ovs_sheet_values" (ByVal request As String, ByVal request_len As Long, ByRef numbers As Double, ByRef kinds As Long, ByVal capacity As Long, ByRef rows As Long, ByRef columns As Long, ByRef texts As Byte, ByVal texts_len As Long, ByRef needed As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_rod_elevation_us Lib "overslab-0.dll" Alias "ovs_rod_elevation_us" (ByVal benchmark_ft As Double, ByVal backsight_ft As Double, ByVal rod_ft As Double, ByRef elevation_ft As Double, ByRef height_of_instrument_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_rod_elevation_si Lib "overslab-0.dll" Alias "ovs_rod_elevation_si" (ByVal benchmark_m As Double, ByVal backsight_m As Double, ByVal rod_m As Double, ByRef elevation_m As Double, ByRef height_of_instrument_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_fall_us Lib "overslab-0.dll" Alias "ovs_fall_us" (ByVal drop_in As Double, ByVal run_ft As Double, ByRef fall_in_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_fall_si Lib "overslab-0.dll" Alias "ovs_fall_si" (ByVal drop_mm As Double, ByVal run_m As Double, ByRef fall_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drop_us Lib "overslab-0.dll" Alias "ovs_drop_us" (ByVal fall_in_per_ft As Double, ByVal run_ft As Double, ByRef drop_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drop_si Lib "overslab-0.dll" Alias "ovs_drop_si" (ByVal fall_percent As Double, ByVal run_m As Double, ByRef drop_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_triangular_prism_us Lib "overslab-0.dll" Alias "ovs_triangular_prism_us" (ByVal area_ft2 As Double, ByVal thickness_1_in As Double, ByVal thickness_2_in As Double, ByVal thickness_3_in As Double, ByRef net_ft3 As Double, ByRef fill_ft3 As Double, ByRef high_ft3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_triangular_prism_si Lib "overslab-0.dll" Alias "ovs_triangular_prism_si" (ByVal area_m2 As Double, ByVal thickness_1_mm As Double, ByVal thickness_2_mm As Double, ByVal thickness_3_mm As Double, ByRef net_m3 As Double, ByRef fill_m3 As Double, ByRef high_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_condition_factor_us Lib "overslab-0.dll" Alias "ovs_condition_factor_us" (ByVal condition As Long, ByRef factor_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_condition_factor_si Lib "overslab-0.dll" Alias "ovs_condition_factor_si" (ByVal condition As Long, ByRef factor_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_required_us Lib "overslab-0.dll" Alias "ovs_overlay_required_us" (ByVal bond As Long, ByVal required_new_in As Double, ByVal required_old_in As Double, ByVal old_slab_in As Double, ByVal condition_ratio As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_required_si Lib "overslab-0.dll" Alias "ovs_overlay_required_si" (ByVal bond As Long, ByVal required_new_mm As Double, ByVal required_old_mm As Double, ByVal old_slab_mm As Double, ByVal condition_ratio As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_slab_equivalent_us Lib "overslab-0.dll" Alias "ovs_slab_equivalent_us" (ByVal bond As Long, ByVal overlay_in As Double, ByVal old_slab_in As Double, ByVal condition_ratio As Double, ByRef equivalent_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_slab_equivalent_si Lib "overslab-0.dll" Alias "ovs_slab_equivalent_si" (ByVal bond As Long, ByVal overlay_mm As Double, ByVal old_slab_mm As Double, ByVal condition_ratio As Double, ByRef equivalent_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_effective_bonded_us Lib "overslab-0.dll" Alias "ovs_overlay_effective_bonded_us" (ByVal required_in As Double, ByVal old_slab_in As Double, ByVal joints_ratio As Double, ByVal durability_ratio As Double, ByVal fatigue_ratio As Double, ByRef effective_in As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_effective_bonded_si Lib "overslab-0.dll" Alias "ovs_overlay_effective_bonded_si" (ByVal required_mm As Double, ByVal old_slab_mm As Double, ByVal joints_ratio As Double, ByVal durability_ratio As Double, ByVal fatigue_ratio As Double, ByRef effective_mm As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_effective_unbonded_us Lib "overslab-0.dll" Alias "ovs_overlay_effective_unbonded_us" (ByVal required_in As Double, ByVal old_slab_in As Double, ByVal joints_ratio As Double, ByRef effective_in As Double, ByRef overlay_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_overlay_effective_unbonded_si Lib "overslab-0.dll" Alias "ovs_overlay_effective_unbonded_si" (ByVal required_mm As Double, ByVal old_slab_mm As Double, ByVal joints_ratio As Double, ByRef effective_mm As Double, ByRef overlay_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_modulus_us Lib "overslab-0.dll" Alias "ovs_concrete_modulus_us" (ByVal strength_psi As Double, ByRef modulus_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_modulus_si Lib "overslab-0.dll" Alias "ovs_concrete_modulus_si" (ByVal strength_mpa As Double, ByRef modulus_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_modulus_by_density_us Lib "overslab-0.dll" Alias "ovs_concrete_modulus_by_density_us" (ByVal strength_psi As Double, ByVal density_lb_per_ft3 As Double, ByRef modulus_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_modulus_by_density_si Lib "overslab-0.dll" Alias "ovs_concrete_modulus_by_density_si" (ByVal strength_mpa As Double, ByVal density_kg_per_m3 As Double, ByRef modulus_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_rupture_us Lib "overslab-0.dll" Alias "ovs_concrete_rupture_us" (ByVal strength_psi As Double, ByVal formula As Long, ByRef rupture_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_concrete_rupture_si Lib "overslab-0.dll" Alias "ovs_concrete_rupture_si" (ByVal strength_mpa As Double, ByVal formula As Long, ByRef rupture_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_bearing_ratio_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_bearing_ratio_us" (ByVal bearing_ratio_percent As Double, ByVal source As Long, ByRef subgrade_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_bearing_ratio_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_bearing_ratio_si" (ByVal bearing_ratio_percent As Double, ByVal source As Long, ByRef subgrade_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_resilient_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_resilient_us" (ByVal resilient_psi As Double, ByRef subgrade_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_resilient_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_resilient_si" (ByVal resilient_mpa As Double, ByRef subgrade_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_soil_us Lib "overslab-0.dll" Alias "ovs_subgrade_from_soil_us" (ByVal soil As Long, ByRef least_pci As Double, ByRef greatest_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_from_soil_si Lib "overslab-0.dll" Alias "ovs_subgrade_from_soil_si" (ByVal soil As Long, ByRef least_mpa_per_m As Double, ByRef greatest_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_with_subbase_us Lib "overslab-0.dll" Alias "ovs_subgrade_with_subbase_us" (ByVal subgrade_pci As Double, ByVal thickness_in As Double, ByVal kind As Long, ByRef top_pci As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_subgrade_with_subbase_si Lib "overslab-0.dll" Alias "ovs_subgrade_with_subbase_si" (ByVal subgrade_mpa_per_m As Double, ByVal thickness_mm As Double, ByVal kind As Long, ByRef top_mpa_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_stiffness_radius_us Lib "overslab-0.dll" Alias "ovs_stiffness_radius_us" (ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_stiffness_radius_si Lib "overslab-0.dll" Alias "ovs_stiffness_radius_si" (ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_contact_radius_us Lib "overslab-0.dll" Alias "ovs_contact_radius_us" (ByVal load_lbf As Double, ByVal pressure_psi As Double, ByRef radius_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_contact_radius_si Lib "overslab-0.dll" Alias "ovs_contact_radius_si" (ByVal load_kn As Double, ByVal pressure_kpa As Double, ByRef radius_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_contact_radius_dual_us Lib "overslab-0.dll" Alias "ovs_contact_radius_dual_us" (ByVal load_lbf As Double, ByVal pressure_psi As Double, ByVal spacing_in As Double, ByRef radius_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_contact_radius_dual_si Lib "overslab-0.dll" Alias "ovs_contact_radius_dual_si" (ByVal load_kn As Double, ByVal pressure_kpa As Double, ByVal spacing_mm As Double, ByRef radius_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_equivalent_radius_us Lib "overslab-0.dll" Alias "ovs_equivalent_radius_us" (ByVal radius_in As Double, ByVal thickness_in As Double, ByRef equivalent_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_equivalent_radius_si Lib "overslab-0.dll" Alias "ovs_equivalent_radius_si" (ByVal radius_mm As Double, ByVal thickness_mm As Double, ByRef equivalent_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_interior_load_us Lib "overslab-0.dll" Alias "ovs_interior_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_interior_load_si Lib "overslab-0.dll" Alias "ovs_interior_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_edge_load_us Lib "overslab-0.dll" Alias "ovs_edge_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal footprint As Long, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_edge_load_si Lib "overslab-0.dll" Alias "ovs_edge_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal footprint As Long, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_edge_load_1926_us Lib "overslab-0.dll" Alias "ovs_edge_load_1926_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal subgrade_pci As Double, ByRef stress_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_edge_load_1926_si Lib "overslab-0.dll" Alias "ovs_edge_load_1926_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal subgrade_mpa_per_m As Double, ByRef stress_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_corner_load_us Lib "overslab-0.dll" Alias "ovs_corner_load_us" (ByVal load_lbf As Double, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal formula As Long, ByRef stress_psi As Double, ByRef deflection_in As Double, ByRef stiffness_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_corner_load_si Lib "overslab-0.dll" Alias "ovs_corner_load_si" (ByVal load_kn As Double, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal formula As Long, ByRef stress_mpa As Double, ByRef deflection_mm As Double, ByRef stiffness_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_corner_crack_us Lib "overslab-0.dll" Alias "ovs_corner_crack_us" (ByVal radius_in As Double, ByVal stiffness_in As Double, ByVal formula As Long, ByRef distance_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_corner_crack_si Lib "overslab-0.dll" Alias "ovs_corner_crack_si" (ByVal radius_mm As Double, ByVal stiffness_mm As Double, ByVal formula As Long, ByRef distance_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_load_influence_us Lib "overslab-0.dll" Alias "ovs_load_influence_us" (ByVal distance_in As Double, ByVal radius_in As Double, ByVal stiffness_in As Double, ByVal poisson_ratio As Double, ByRef deflection_ratio As Double, ByRef radial_ratio As Double, ByRef tangential_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_load_influence_si Lib "overslab-0.dll" Alias "ovs_load_influence_si" (ByVal distance_mm As Double, ByVal radius_mm As Double, ByVal stiffness_mm As Double, ByVal poisson_ratio As Double, ByRef deflection_ratio As Double, ByRef radial_ratio As Double, ByRef tangential_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_safety_factors_us Lib "overslab-0.dll" Alias "ovs_safety_factors_us" (ByVal kind As Long, ByRef least_ratio As Double, ByRef usual_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_safety_factors_si Lib "overslab-0.dll" Alias "ovs_safety_factors_si" (ByVal kind As Long, ByRef least_ratio As Double, ByRef usual_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_allowable_stress_us Lib "overslab-0.dll" Alias "ovs_allowable_stress_us" (ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef allowable_psi As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_allowable_stress_si Lib "overslab-0.dll" Alias "ovs_allowable_stress_si" (ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef allowable_mpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_allowable_load_us Lib "overslab-0.dll" Alias "ovs_allowable_load_us" (ByVal position As Long, ByVal radius_in As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef load_lbf As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_allowable_load_si Lib "overslab-0.dll" Alias "ovs_allowable_load_si" (ByVal position As Long, ByVal radius_mm As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef load_kn As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_uniform_load_us Lib "overslab-0.dll" Alias "ovs_uniform_load_us" (ByVal thickness_in As Double, ByVal subgrade_pci As Double, ByVal rupture_psi As Double, ByVal safety_ratio As Double, ByRef load_psf As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_uniform_load_si Lib "overslab-0.dll" Alias "ovs_uniform_load_si" (ByVal thickness_mm As Double, ByVal subgrade_mpa_per_m As Double, ByVal rupture_mpa As Double, ByVal safety_ratio As Double, ByRef load_kpa As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_wall_load_us Lib "overslab-0.dll" Alias "ovs_wall_load_us" (ByVal thickness_in As Double, ByVal subgrade_pci As Double, ByVal strength_psi As Double, ByVal place As Long, ByRef load_lbf_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_wall_load_si Lib "overslab-0.dll" Alias "ovs_wall_load_si" (ByVal thickness_mm As Double, ByVal subgrade_mpa_per_m As Double, ByVal strength_mpa As Double, ByVal place As Long, ByRef load_kn_per_m As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_curling_coefficient_us Lib "overslab-0.dll" Alias "ovs_curling_coefficient_us" (ByVal side_ft As Double, ByVal stiffness_in As Double, ByRef coefficient_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_curling_coefficient_si Lib "overslab-0.dll" Alias "ovs_curling_coefficient_si" (ByVal side_m As Double, ByVal stiffness_mm As Double, ByRef coefficient_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_curling_stress_us Lib "overslab-0.dll" Alias "ovs_curling_stress_us" (ByVal length_ft As Double, ByVal width_ft As Double, ByVal thickness_in As Double, ByVal modulus_psi As Double, ByVal poisson_ratio As Double, ByVal subgrade_pci As Double, ByVal expansion_per_degf As Double, ByVal difference_degf As Double, ByRef interior_length_psi As Double, ByRef interior_width_psi As Double, ByRef edge_length_psi As Double, ByRef edge_width_psi As Double, ByRef of_length_ratio As Double, ByRef of_width_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_curling_stress_si Lib "overslab-0.dll" Alias "ovs_curling_stress_si" (ByVal length_m As Double, ByVal width_m As Double, ByVal thickness_mm As Double, ByVal modulus_mpa As Double, ByVal poisson_ratio As Double, ByVal subgrade_mpa_per_m As Double, ByVal expansion_per_degc As Double, ByVal difference_k As Double, ByRef interior_length_mpa As Double, ByRef interior_width_mpa As Double, ByRef edge_length_mpa As Double, ByRef edge_width_mpa As Double, ByRef of_length_ratio As Double, ByRef of_width_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_two_layers_us Lib "overslab-0.dll" Alias "ovs_two_layers_us" (ByVal bond As Long, ByVal overlay_in As Double, ByVal overlay_modulus_psi As Double, ByVal old_slab_in As Double, ByVal old_modulus_psi As Double, ByRef equivalent_in As Double, ByRef overlay_share_ratio As Double, ByRef overlay_top_ratio As Double, ByRef overlay_bottom_ratio As Double, ByRef old_top_ratio As Double, ByRef old_bottom_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_two_layers_si Lib "overslab-0.dll" Alias "ovs_two_layers_si" (ByVal bond As Long, ByVal overlay_mm As Double, ByVal overlay_modulus_mpa As Double, ByVal old_slab_mm As Double, ByVal old_modulus_mpa As Double, ByRef equivalent_mm As Double, ByRef overlay_share_ratio As Double, ByRef overlay_top_ratio As Double, ByRef overlay_bottom_ratio As Double, ByRef old_top_ratio As Double, ByRef old_bottom_ratio As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_moisture_tests_us Lib "overslab-0.dll" Alias "ovs_moisture_tests_us" (ByVal area_ft2 As Double, ByVal thickness_in As Double, ByVal drying As Long, ByRef count As Long, ByRef depth_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_moisture_tests_si Lib "overslab-0.dll" Alias "ovs_moisture_tests_si" (ByVal area_m2 As Double, ByVal thickness_mm As Double, ByVal drying As Long, ByRef count As Long, ByRef depth_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drying_time_us Lib "overslab-0.dll" Alias "ovs_drying_time_us" (ByVal thickness_in As Double, ByRef least_d As Double, ByRef greatest_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drying_time_si Lib "overslab-0.dll" Alias "ovs_drying_time_si" (ByVal thickness_mm As Double, ByRef least_d As Double, ByRef greatest_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drying_time_by_water_us Lib "overslab-0.dll" Alias "ovs_drying_time_by_water_us" (ByVal water_cement_w_per_cm As Double, ByRef time_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_drying_time_by_water_si Lib "overslab-0.dll" Alias "ovs_drying_time_by_water_si" (ByVal water_cement_w_per_cm As Double, ByRef time_d As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_vapour_emission_us Lib "overslab-0.dll" Alias "ovs_vapour_emission_us" (ByVal gain_g As Double, ByVal area_ft2 As Double, ByVal time_h As Double, ByRef emission_lb_per_1000ft2_24h As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_vapour_emission_si Lib "overslab-0.dll" Alias "ovs_vapour_emission_si" (ByVal gain_g As Double, ByVal area_m2 As Double, ByVal time_h As Double, ByRef emission_g_per_m2_24h As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_added_weight_us Lib "overslab-0.dll" Alias "ovs_added_weight_us" (ByVal thickness_in As Double, ByVal density_lb_per_ft3 As Double, ByVal support As Long, ByRef weight_psf As Double, ByRef next_value As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_added_weight_si Lib "overslab-0.dll" Alias "ovs_added_weight_si" (ByVal thickness_mm As Double, ByVal density_kg_per_m3 As Double, ByVal support As Long, ByRef weight_kpa As Double, ByRef next_value As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_puddle_fall_us Lib "overslab-0.dll" Alias "ovs_puddle_fall_us" (ByVal wave_height_in As Double, ByVal wave_length_ft As Double, ByRef fall_in_per_ft As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_puddle_fall_si Lib "overslab-0.dll" Alias "ovs_puddle_fall_si" (ByVal wave_height_mm As Double, ByVal wave_length_m As Double, ByRef fall_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_puddle_depth_us Lib "overslab-0.dll" Alias "ovs_puddle_depth_us" (ByVal wave_height_in As Double, ByVal wave_length_ft As Double, ByVal fall_in_per_ft As Double, ByRef depth_in As Double, ByRef greatest_wave_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_puddle_depth_si Lib "overslab-0.dll" Alias "ovs_puddle_depth_si" (ByVal wave_height_mm As Double, ByVal wave_length_m As Double, ByVal fall_percent As Double, ByRef depth_mm As Double, ByRef greatest_wave_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_runoff_us Lib "overslab-0.dll" Alias "ovs_runoff_us" (ByVal area_ft2 As Double, ByVal rain_in_per_h As Double, ByVal coefficient_percent As Double, ByRef flow_gal_per_min As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_runoff_si Lib "overslab-0.dll" Alias "ovs_runoff_si" (ByVal area_m2 As Double, ByVal rain_mm_per_h As Double, ByVal coefficient_percent As Double, ByRef flow_l_per_s As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_crest_clearance_us Lib "overslab-0.dll" Alias "ovs_crest_clearance_us" (ByVal wheelbase_in As Double, ByVal change_percent As Double, ByRef lost_in As Double, ByRef exact_in As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_crest_clearance_si Lib "overslab-0.dll" Alias "ovs_crest_clearance_si" (ByVal wheelbase_mm As Double, ByVal change_percent As Double, ByRef lost_mm As Double, ByRef exact_mm As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_sag_break_us Lib "overslab-0.dll" Alias "ovs_sag_break_us" (ByVal overhang_in As Double, ByVal bumper_in As Double, ByRef change_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_sag_break_si Lib "overslab-0.dll" Alias "ovs_sag_break_si" (ByVal overhang_mm As Double, ByVal bumper_mm As Double, ByRef change_percent As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_block_us Lib "overslab-0.dll" Alias "ovs_block_us" (ByVal length_ft As Double, ByVal width_ft As Double, ByVal depth_in As Double, ByRef volume_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_block_si Lib "overslab-0.dll" Alias "ovs_block_si" (ByVal length_m As Double, ByVal width_m As Double, ByVal depth_mm As Double, ByRef volume_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_prismoid_us Lib "overslab-0.dll" Alias "ovs_prismoid_us" (ByVal length_ft As Double, ByVal first_ft2 As Double, ByVal middle_ft2 As Double, ByVal last_ft2 As Double, ByRef volume_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_prismoid_si Lib "overslab-0.dll" Alias "ovs_prismoid_si" (ByVal length_m As Double, ByVal first_m2 As Double, ByVal middle_m2 As Double, ByVal last_m2 As Double, ByRef volume_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_trucks_us Lib "overslab-0.dll" Alias "ovs_trucks_us" (ByVal ordered_yd3 As Double, ByVal capacity_yd3 As Double, ByRef loads As Long, ByRef last_yd3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_trucks_si Lib "overslab-0.dll" Alias "ovs_trucks_si" (ByVal ordered_m3 As Double, ByVal capacity_m3 As Double, ByRef loads As Long, ByRef last_m3 As Double, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
#End If

Private Const LIBRARY As String = "overslab-0.dll"
Private Const ABI As Long = 0

' Kinds of a cell in an answer.
Private Const CELL_NUMBER As Long = 1
Private Const CELL_TEXT As Long = 2
Private Const CELL_REFUSED As Long = 3

' Statuses that are looked at.
Private Const BUFFER_SHORT As Long = 94
Private Const NOT_FINITE As Long = 15
Private Const NEGATIVE As Long = 16
Private Const OUT_OF_RANGE As Long = 17

Private Const ERROR_VALUE As Long = 2015
Private Const ERROR_NUM As Long = 2036

Private ready As Boolean

' The version of the library; where it cannot be used, which file was looked for and why not.
Public Function OVS_VERSION() As Variant
    Dim text(0 To 63) As Byte, trouble As String
    trouble = LibraryTrouble()
    If trouble = "" Then
        If dll_version(text(0), 64) = 0 Then trouble = FromUtf8(text, LengthOf(text))
    End If
    OVS_VERSION = trouble
End Function

' One line that names the file where the library cannot be used, else an empty text.
Private Function LibraryTrouble() As String
    Dim file As String
    If ready Then Exit Function
    If LCase$(Left$(ThisWorkbook.Path, 4)) = "http" Then
        LibraryTrouble = "OVERSLAB: the workbook lies at " & ThisWorkbook.Path & ": save it in a folder of this PC, beside " & LIBRARY
        Exit Function
    End If
    file = ThisWorkbook.Path & "\" & LIBRARY
    On Error GoTo Unusable
    If dll_load(StrPtr(file)) = 0 Then
        LibraryTrouble = "OVERSLAB: " & file & " " & LoadTrouble(Err.LastDllError)
    ElseIf dll_abi_version() <> ABI Then
        LibraryTrouble = "OVERSLAB: " & file & " has ABI " & dll_abi_version() & ", this module needs " & ABI & ": take both from one package"
    Else
        ready = True
    End If
    Exit Function
Unusable:
    LibraryTrouble = "OVERSLAB: " & file & " cannot be used: " & Err.Description
End Function

' The words for the errors of Windows on loading a library.
Private Function LoadTrouble(ByVal number As Long) As String
    Select Case number
        Case 2, 3, 126
            LoadTrouble = "is missing: put it beside this workbook"
        Case 193
            LoadTrouble = "is not for this Office: it takes the 64-bit library and 64-bit Office"
        Case Else
            LoadTrouble = "cannot be loaded, error " & number & " of Windows"
    End Select
End Function

' The error value for a status.
Private Function ErrorFor(ByVal status As Long) As Variant
    Select Case status
        Case NOT_FINITE, NEGATIVE, OUT_OF_RANGE
            ErrorFor = CVErr(ERROR_NUM)
        Case Else
            ErrorFor = CVErr(ERROR_VALUE)
    End Select
End Function

' The body of every function: cells in, cells out.
Private Function Called(ByVal operation As String, ByVal system As String, ByVal want As String, ByVal result As Variant, ByVal given As Variant) As Variant
    Dim request As String, fault As Variant, trouble As String
    request = RequestFor(operation, system, want, result, given, fault)
    If IsError(fault) Then
        Called = fault
        Exit Function
    End If
    trouble = LibraryTrouble()
    If trouble = "" Then
        Called = Asked(request, want)
    ElseIf want = "why" Then
        Called = trouble
    Else
        Called = CVErr(ERROR_VALUE)
    End If
End Function

' Asks the library, with more room where the answer needs it.
Private Function Asked(ByVal request As String, ByVal want As String) As Variant
    Dim numbers() As Double, kinds() As Long, texts() As Byte, msg(0 To 255) As Byte
    Dim capacity As Long, room As Long, rows As Long, columns As Long, needed As Long, status As Long, turn As Long
    capacity = 64
    room = 4096
    For turn = 1 To 2
        ReDim numbers(0 To capacity - 1)
        ReDim kinds(0 To capacity - 1)
        ReDim texts(0 To room - 1)
        status = dll_sheet_values(request, Len(request), numbers(0), kinds(0), capacity, rows, columns, texts(0), room, needed, msg(0), 256)
        If status <> BUFFER_SHORT Then Exit For
        If rows * columns > capacity Then capacity = rows * columns
        If needed > room Then room = needed
    Next turn
    If status = 0 Then
        Asked = Assembled(numbers, kinds, rows, columns, FromUtf8(texts, needed - 1))
    ElseIf want = "why" Then
        Asked = FromUtf8(msg, LengthOf(msg))
    Else
        Asked = ErrorFor(status)
    End If
End Function

' The cells of an answer: one value, or rows of them. An empty cell is an empty text, since nothing would show as a zero.
Private Function Assembled(ByVal numbers As Variant, ByVal kinds As Variant, ByVal rows As Long, ByVal columns As Long, ByVal texts As String) As Variant
    Dim made() As Variant, words As Variant, row As Long, column As Long, place As Long, word As Long
    words = Split(texts, Chr$(10))
    ReDim made(1 To rows, 1 To columns)
    For row = 1 To rows
        For column = 1 To columns
            Select Case kinds(place)
                Case CELL_NUMBER
                    made(row, column) = numbers(place)
                Case CELL_TEXT
                    If word <= UBound(words) Then made(row, column) = words(word) Else made(row, column) = ""
                    word = word + 1
                Case CELL_REFUSED
                    made(row, column) = ErrorFor(CLng(numbers(place)))
                Case Else
                    made(row, column) = ""
            End Select
            place = place + 1
        Next column
    Next row
    If rows = 1 And columns = 1 Then Assembled = made(1, 1) Else Assembled = made
End Function

' The request as JSON. An error in a cell comes back as the fault: what depends on it is that error too.
Private Function RequestFor(ByVal operation As String, ByVal system As String, ByVal want As String, ByVal result As Variant, ByVal given As Variant, ByRef fault As Variant) As String
    Dim parts() As String, index As Long, last As Long, text As String
    text = "{""operation"":" & JsonText(operation) & ",""system"":" & JsonText(system) & ",""want"":" & JsonText(want)
    If want = "get" Then
        result = ValueOf(result)
        If IsError(result) Then
            fault = result
            Exit Function
        End If
        If IsArray(result) Then result = ""
        text = text & ",""result"":" & JsonText(CStr(result))
    End If
    last = UBound(given)
    Do While last >= 0
        If Not Missing(given(last)) Then Exit Do
        last = last - 1
    Loop
    text = text & ",""empty"":""null"",""arguments"":["
    If last >= 0 Then
        ReDim parts(0 To last)
        For index = 0 To last
            parts(index) = JsonArgument(given(index), fault)
        Next index
        text = text & Join(parts, ",")
    End If
    RequestFor = text & "]}"
End Function

' Whether an argument was left out; in an array it is still told apart.
Private Function Missing(ByVal given As Variant) As Boolean
    Missing = IsMissing(given)
End Function

' A range, an array or a value.
Private Function JsonArgument(ByVal given As Variant, ByRef fault As Variant) As String
    Dim held As Variant
    If Missing(given) Then
        JsonArgument = "null"
        Exit Function
    End If
    held = ValueOf(given)
    If Not IsArray(held) Then
        JsonArgument = JsonCell(held, fault)
    ElseIf Dimensions(held) = 1 Then
        JsonArgument = "[" & JsonRow(held, fault) & "]"
    Else
        JsonArgument = JsonRows(held, fault)
    End If
End Function

' What a range holds, or the value itself.
Private Function ValueOf(ByVal given As Variant) As Variant
    If IsObject(given) Then ValueOf = HeldBy(given) Else ValueOf = given
End Function

' A date or an amount of money in a cell is its plain number.
Private Function HeldBy(ByVal area As Object) As Variant
    HeldBy = area.Value2
End Function

Private Function JsonRow(ByVal cells As Variant, ByRef fault As Variant) As String
    Dim parts() As String, column As Long
    ReDim parts(LBound(cells) To UBound(cells))
    For column = LBound(cells) To UBound(cells)
        parts(column) = JsonCell(cells(column), fault)
    Next column
    JsonRow = "[" & Join(parts, ",") & "]"
End Function

Private Function JsonRows(ByVal cells As Variant, ByRef fault As Variant) As String
    Dim rows() As String, parts() As String, row As Long, column As Long
    ReDim rows(LBound(cells, 1) To UBound(cells, 1))
    For row = LBound(cells, 1) To UBound(cells, 1)
        ReDim parts(LBound(cells, 2) To UBound(cells, 2))
        For column = LBound(cells, 2) To UBound(cells, 2)
            parts(column) = JsonCell(cells(row, column), fault)
        Next column
        rows(row) = "[" & Join(parts, ",") & "]"
    Next row
    JsonRows = "[" & Join(rows, ",") & "]"
End Function

' How many dimensions an array has: one or two; there is no other way to ask than to try.
Private Function Dimensions(ByVal cells As Variant) As Long
    Dim bound As Long
    Dimensions = 1
    On Error GoTo Done
    bound = UBound(cells, 2)
    Dimensions = 2
Done:
End Function

Private Function JsonCell(ByVal cell As Variant, ByRef fault As Variant) As String
    If IsError(cell) Then
        If Not IsError(fault) Then fault = cell
        JsonCell = "null"
    ElseIf IsEmpty(cell) Or IsNull(cell) Then
        JsonCell = "null"
    Else
        Select Case VarType(cell)
            Case vbString
                JsonCell = JsonText(CStr(cell))
            Case vbBoolean
                If cell Then JsonCell = "true" Else JsonCell = "false"
            Case Else
                JsonCell = JsonNumber(CDbl(cell))
        End Select
    End If
End Function

' A number to the last bit. Str$ has fifteen digits only, whatever the language of the PC, so what they cannot hold goes as
' whole numbers: sign * (high * 2 ^ 26 + low) * 2 ^ power.
Private Function JsonNumber(ByVal number As Double) As String
    Dim whole As Double, high As Double, power As Long
    If number = 0 Then
        JsonNumber = "0"
        Exit Function
    End If
    If Abs(number) < 1000000000# And number = Int(number) Then
        JsonNumber = Trim$(Str$(number))
        Exit Function
    End If
    power = Int(Log(Abs(number)) / Log(2#)) - 52
    If power < -1074 Then power = -1074
    whole = Scaled(Abs(number), -power)
    Do While whole <> Int(whole)
        power = power - 1
        whole = Scaled(Abs(number), -power)
    Loop
    high = Int(whole / 67108864#)
    JsonNumber = "{""exact"":[" & Sgn(number) & "," & Trim$(Str$(high)) & "," & Trim$(Str$(whole - high * 67108864#)) & "," & power & "]}"
End Function

' number * 2 ^ power, in two steps, since 2 ^ 1074 is no double.
Private Function Scaled(ByVal number As Double, ByVal power As Long) As Double
    Dim half As Long
    half = power \ 2
    Scaled = number * 2# ^ half * 2# ^ (power - half)
End Function

' A text in JSON, in ASCII.
Private Function JsonText(ByVal text As String) As String
    Dim made As String, at As Long, code As Long
    For at = 1 To Len(text)
        code = AscW(Mid$(text, at, 1)) And 65535
        If code < 32 Or code > 126 Or code = 34 Or code = 92 Then
            made = made & "\u" & Right$("000" & Hex$(code), 4)
        Else
            made = made & Mid$(text, at, 1)
        End If
    Next at
    JsonText = """" & made & """"
End Function

' The bytes before the first zero.
Private Function LengthOf(ByVal bytes As Variant) As Long
    Dim at As Long
    For at = LBound(bytes) To UBound(bytes)
        If bytes(at) = 0 Then Exit For
    Next at
    LengthOf = at - LBound(bytes)
End Function

' The text in so many bytes of UTF-8, as the library writes it.
Private Function FromUtf8(ByVal bytes As Variant, ByVal length As Long) As String
    Dim made As String, at As Long, code As Long, more As Long, filled As Long
    If length <= 0 Then Exit Function
    made = Space$(length)
    Do While at < length
        code = bytes(at)
        more = 0
        If code >= 240 Then
            code = code And 7
            more = 3
        ElseIf code >= 224 Then
            code = code And 15
            more = 2
        ElseIf code >= 192 Then
            code = code And 31
            more = 1
        End If
        at = at + 1
        Do While more > 0 And at < length
            code = code * 64 + (bytes(at) And 63)
            at = at + 1
            more = more - 1
        Loop
        If code >= 65536 Then
            Mid$(made, filled + 1, 1) = ChrW(55296 + (code - 65536) \ 1024)
            filled = filled + 1
            code = 56320 + (code - 65536) Mod 1024
        End If
        Mid$(made, filled + 1, 1) = ChrW(code)
        filled = filled + 1
    Loop
    FromUtf8 = Left$(made, filled)
End Function

' Whether all arguments are plain numbers that the library's own function takes; "w" stands for a whole number.
Private Function Flat(ByVal given As Variant, ByVal kinds As String, ByRef numbers() As Double) As Boolean
    Dim index As Long, cell As Variant
    For index = 0 To UBound(given)
        cell = ValueOf(given(index))
        If IsArray(cell) Or IsError(cell) Then Exit Function
        If VarType(cell) <> vbDouble And VarType(cell) <> vbLong And VarType(cell) <> vbInteger Then Exit Function
        numbers(index) = cell
        If Mid$(kinds, index + 1, 1) = "w" Then
            If numbers(index) <> Int(numbers(index)) Or Abs(numbers(index)) > 2147483647# Then Exit Function
        End If
    Next index
    Flat = (LibraryTrouble() = "")
End Function

' Several results side by side.
Private Function SideBySide(ByVal results As Variant) As Variant
    Dim made() As Variant, index As Long
    ReDim made(1 To 1, 1 To UBound(results) + 1)
    For index = 0 To UBound(results)
        made(1, index + 1) = results(index)
    Next index
    SideBySide = made
End Function

' The elevation of a point from one set-up of the level.
' benchmark_ft: elevation of the benchmark (ft); at least -3280.83989501 ft, at most 32808.3989501 ft
' backsight_ft: rod on the benchmark (ft); at least 0 ft, at most 32.8083989501 ft
' rod_ft: rod on the point (ft); at least 0 ft, at most 32.8083989501 ft
' Gives elevation_ft (elevation of the point), height_of_instrument_ft (height of the line of sight).
Public Function OVS_ROD_ELEVATION_US(ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, ByVal rod_ft As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(benchmark_ft, backsight_ft, rod_ft), "ddd", x) Then
        status = dll_rod_elevation_us(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_ROD_ELEVATION_US = SideBySide(Array(y1, y2)) Else OVS_ROD_ELEVATION_US = ErrorFor(status)
        Exit Function
    End If
    OVS_ROD_ELEVATION_US = Called("rod_elevation", "us", "value", "", Array(benchmark_ft, backsight_ft, rod_ft))
End Function

Public Function OVS_ROD_ELEVATION_US_WHY(ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, ByVal rod_ft As Variant) As Variant
    OVS_ROD_ELEVATION_US_WHY = Called("rod_elevation", "us", "why", "", Array(benchmark_ft, backsight_ft, rod_ft))
End Function

Public Function OVS_ROD_ELEVATION_US_GET(ByVal result As Variant, ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, ByVal rod_ft As Variant) As Variant
    OVS_ROD_ELEVATION_US_GET = Called("rod_elevation", "us", "get", result, Array(benchmark_ft, backsight_ft, rod_ft))
End Function

' The elevation of a point from one set-up of the level.
' benchmark_m: elevation of the benchmark (m); at least -1000 m, at most 10000 m
' backsight_m: rod on the benchmark (m); at least 0 m, at most 10 m
' rod_m: rod on the point (m); at least 0 m, at most 10 m
' Gives elevation_m (elevation of the point), height_of_instrument_m (height of the line of sight).
Public Function OVS_ROD_ELEVATION_SI(ByVal benchmark_m As Variant, ByVal backsight_m As Variant, ByVal rod_m As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(benchmark_m, backsight_m, rod_m), "ddd", x) Then
        status = dll_rod_elevation_si(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_ROD_ELEVATION_SI = SideBySide(Array(y1, y2)) Else OVS_ROD_ELEVATION_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_ROD_ELEVATION_SI = Called("rod_elevation", "si", "value", "", Array(benchmark_m, backsight_m, rod_m))
End Function

Public Function OVS_ROD_ELEVATION_SI_WHY(ByVal benchmark_m As Variant, ByVal backsight_m As Variant, ByVal rod_m As Variant) As Variant
    OVS_ROD_ELEVATION_SI_WHY = Called("rod_elevation", "si", "why", "", Array(benchmark_m, backsight_m, rod_m))
End Function

Public Function OVS_ROD_ELEVATION_SI_GET(ByVal result As Variant, ByVal benchmark_m As Variant, ByVal backsight_m As Variant, ByVal rod_m As Variant) As Variant
    OVS_ROD_ELEVATION_SI_GET = Called("rod_elevation", "si", "get", result, Array(benchmark_m, backsight_m, rod_m))
End Function

' Reduces a level book: heights of instrument, elevations, closure.
' page: the readings in the order they were booked; a range with the columns point, [backsight_ft], [sight_ft], [foresight_ft], [close_ft]
' benchmarks: the points of known elevation; a range with the columns name, elevation_ft
' closure_tolerance_in: how far a line of two or more set-ups may be off (in); at least 0 in; may be left out
' recheck_tolerance_in: how far one set-up may be off: its backsight point read again, or the benchmark it ends on (in); at least 0 in; may be left out
' Gives misclosure_in (found less known where the line closes), backsights_ft (sum of the backsights of the first line), foresights_ft (sum of its foresights), rise_ft (last less first of that line), setups (the set-ups), points (the points).
Public Function OVS_LEVEL_BOOK_US(ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_in As Variant, Optional ByVal recheck_tolerance_in As Variant) As Variant
    OVS_LEVEL_BOOK_US = Called("level_book", "us", "value", "", Array(page, benchmarks, closure_tolerance_in, recheck_tolerance_in))
End Function

Public Function OVS_LEVEL_BOOK_US_WHY(ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_in As Variant, Optional ByVal recheck_tolerance_in As Variant) As Variant
    OVS_LEVEL_BOOK_US_WHY = Called("level_book", "us", "why", "", Array(page, benchmarks, closure_tolerance_in, recheck_tolerance_in))
End Function

Public Function OVS_LEVEL_BOOK_US_GET(ByVal result As Variant, ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_in As Variant, Optional ByVal recheck_tolerance_in As Variant) As Variant
    OVS_LEVEL_BOOK_US_GET = Called("level_book", "us", "get", result, Array(page, benchmarks, closure_tolerance_in, recheck_tolerance_in))
End Function

' Reduces a level book: heights of instrument, elevations, closure.
' page: the readings in the order they were booked; a range with the columns point, [backsight_m], [sight_m], [foresight_m], [close_m]
' benchmarks: the points of known elevation; a range with the columns name, elevation_m
' closure_tolerance_mm: how far a line of two or more set-ups may be off (mm); at least 0 mm; may be left out
' recheck_tolerance_mm: how far one set-up may be off: its backsight point read again, or the benchmark it ends on (mm); at least 0 mm; may be left out
' Gives misclosure_mm (found less known where the line closes), backsights_m (sum of the backsights of the first line), foresights_m (sum of its foresights), rise_m (last less first of that line), setups (the set-ups), points (the points).
Public Function OVS_LEVEL_BOOK_SI(ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_mm As Variant, Optional ByVal recheck_tolerance_mm As Variant) As Variant
    OVS_LEVEL_BOOK_SI = Called("level_book", "si", "value", "", Array(page, benchmarks, closure_tolerance_mm, recheck_tolerance_mm))
End Function

Public Function OVS_LEVEL_BOOK_SI_WHY(ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_mm As Variant, Optional ByVal recheck_tolerance_mm As Variant) As Variant
    OVS_LEVEL_BOOK_SI_WHY = Called("level_book", "si", "why", "", Array(page, benchmarks, closure_tolerance_mm, recheck_tolerance_mm))
End Function

Public Function OVS_LEVEL_BOOK_SI_GET(ByVal result As Variant, ByVal page As Variant, ByVal benchmarks As Variant, Optional ByVal closure_tolerance_mm As Variant, Optional ByVal recheck_tolerance_mm As Variant) As Variant
    OVS_LEVEL_BOOK_SI_GET = Called("level_book", "si", "get", result, Array(page, benchmarks, closure_tolerance_mm, recheck_tolerance_mm))
End Function

' The plan edge of the work from its corners in order.
' corners: the corners in order; a range with the columns x_ft, y_ft, [edge]
' Gives outline (the outline).
Public Function OVS_OUTLINE_FROM_CORNERS_US(ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_US = Called("outline_from_corners", "us", "value", "", Array(corners))
End Function

Public Function OVS_OUTLINE_FROM_CORNERS_US_WHY(ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_US_WHY = Called("outline_from_corners", "us", "why", "", Array(corners))
End Function

Public Function OVS_OUTLINE_FROM_CORNERS_US_GET(ByVal result As Variant, ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_US_GET = Called("outline_from_corners", "us", "get", result, Array(corners))
End Function

' The plan edge of the work from its corners in order.
' corners: the corners in order; a range with the columns x_m, y_m, [edge]
' Gives outline (the outline).
Public Function OVS_OUTLINE_FROM_CORNERS_SI(ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_SI = Called("outline_from_corners", "si", "value", "", Array(corners))
End Function

Public Function OVS_OUTLINE_FROM_CORNERS_SI_WHY(ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_SI_WHY = Called("outline_from_corners", "si", "why", "", Array(corners))
End Function

Public Function OVS_OUTLINE_FROM_CORNERS_SI_GET(ByVal result As Variant, ByVal corners As Variant) As Variant
    OVS_OUTLINE_FROM_CORNERS_SI_GET = Called("outline_from_corners", "si", "get", result, Array(corners))
End Function

' The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
' sides: the walls in order; a range with the columns length_ft, [name], [turn]
' diagonal_ft: first corner to third, of four walls (ft); more than 0 ft, at most 32808.3989501 ft; may be left out
' second_diagonal_ft: second corner to fourth, of four walls (ft); more than 0 ft, at most 32808.3989501 ft; may be left out
' Gives outline (the outline).
Public Function OVS_OUTLINE_FROM_SIDES_US(ByVal sides As Variant, Optional ByVal diagonal_ft As Variant, Optional ByVal second_diagonal_ft As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_US = Called("outline_from_sides", "us", "value", "", Array(sides, diagonal_ft, second_diagonal_ft))
End Function

Public Function OVS_OUTLINE_FROM_SIDES_US_WHY(ByVal sides As Variant, Optional ByVal diagonal_ft As Variant, Optional ByVal second_diagonal_ft As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_US_WHY = Called("outline_from_sides", "us", "why", "", Array(sides, diagonal_ft, second_diagonal_ft))
End Function

Public Function OVS_OUTLINE_FROM_SIDES_US_GET(ByVal result As Variant, ByVal sides As Variant, Optional ByVal diagonal_ft As Variant, Optional ByVal second_diagonal_ft As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_US_GET = Called("outline_from_sides", "us", "get", result, Array(sides, diagonal_ft, second_diagonal_ft))
End Function

' The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
' sides: the walls in order; a range with the columns length_m, [name], [turn]
' diagonal_m: first corner to third, of four walls (m); more than 0 m, at most 10000 m; may be left out
' second_diagonal_m: second corner to fourth, of four walls (m); more than 0 m, at most 10000 m; may be left out
' Gives outline (the outline).
Public Function OVS_OUTLINE_FROM_SIDES_SI(ByVal sides As Variant, Optional ByVal diagonal_m As Variant, Optional ByVal second_diagonal_m As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_SI = Called("outline_from_sides", "si", "value", "", Array(sides, diagonal_m, second_diagonal_m))
End Function

Public Function OVS_OUTLINE_FROM_SIDES_SI_WHY(ByVal sides As Variant, Optional ByVal diagonal_m As Variant, Optional ByVal second_diagonal_m As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_SI_WHY = Called("outline_from_sides", "si", "why", "", Array(sides, diagonal_m, second_diagonal_m))
End Function

Public Function OVS_OUTLINE_FROM_SIDES_SI_GET(ByVal result As Variant, ByVal sides As Variant, Optional ByVal diagonal_m As Variant, Optional ByVal second_diagonal_m As Variant) As Variant
    OVS_OUTLINE_FROM_SIDES_SI_GET = Called("outline_from_sides", "si", "get", result, Array(sides, diagonal_m, second_diagonal_m))
End Function

' The surface of the old slab through shots in any order.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' shots: the shots; a range with the columns x_ft, y_ft, elevation_ft, [name], [outside], [step]
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_SHOTS_US(ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_US = Called("survey_from_shots", "us", "value", "", Array(outline, shots, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_SHOTS_US_WHY(ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_US_WHY = Called("survey_from_shots", "us", "why", "", Array(outline, shots, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_SHOTS_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_US_GET = Called("survey_from_shots", "us", "get", result, Array(outline, shots, instrument, texture, beyond_allowed))
End Function

' The surface of the old slab through shots in any order.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' shots: the shots; a range with the columns x_m, y_m, elevation_m, [name], [outside], [step]
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_SHOTS_SI(ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_SI = Called("survey_from_shots", "si", "value", "", Array(outline, shots, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_SHOTS_SI_WHY(ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_SI_WHY = Called("survey_from_shots", "si", "why", "", Array(outline, shots, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_SHOTS_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal shots As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_SHOTS_SI_GET = Called("survey_from_shots", "si", "get", result, Array(outline, shots, instrument, texture, beyond_allowed))
End Function

' The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' points: the points; a range with the columns x_ft, y_ft, elevation_ft, [name]
' faces: the triangles; a range with the columns first, second, third
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_FACES_US(ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_US = Called("survey_from_faces", "us", "value", "", Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_FACES_US_WHY(ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_US_WHY = Called("survey_from_faces", "us", "why", "", Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_FACES_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_US_GET = Called("survey_from_faces", "us", "get", result, Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

' The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' points: the points; a range with the columns x_m, y_m, elevation_m, [name]
' faces: the triangles; a range with the columns first, second, third
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_FACES_SI(ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_SI = Called("survey_from_faces", "si", "value", "", Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_FACES_SI_WHY(ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_SI_WHY = Called("survey_from_faces", "si", "why", "", Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_FACES_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal points As Variant, ByVal faces As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_FACES_SI_GET = Called("survey_from_faces", "si", "get", result, Array(outline, points, faces, instrument, texture, beyond_allowed))
End Function

' The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' columns: the grid columns from the left wall; a range with the columns x_ft
' rows: the grid rows from the front wall; a range with the columns y_ft
' elevations: the heights, row by row; a range with the columns [elevation_ft]
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' steps: whether a row or column given twice, one after the other, is the two sides of a step; no or yes; left out: no, because a distance written twice is more often a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_GRID_US(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_US = Called("survey_from_grid", "us", "value", "", Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_GRID_US_WHY(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_US_WHY = Called("survey_from_grid", "us", "why", "", Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_GRID_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_US_GET = Called("survey_from_grid", "us", "get", result, Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

' The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' columns: the grid columns from the left wall; a range with the columns x_m
' rows: the grid rows from the front wall; a range with the columns y_m
' elevations: the heights, row by row; a range with the columns [elevation_m]
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' steps: whether a row or column given twice, one after the other, is the two sides of a step; no or yes; left out: no, because a distance written twice is more often a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_GRID_SI(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_SI = Called("survey_from_grid", "si", "value", "", Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_GRID_SI_WHY(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_SI_WHY = Called("survey_from_grid", "si", "why", "", Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_GRID_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal elevations As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_GRID_SI_GET = Called("survey_from_grid", "si", "get", result, Array(outline, columns, rows, elevations, instrument, texture, beyond_allowed, steps))
End Function

' The surface of the old slab through a grid of rod readings from one set-up.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' columns: the grid columns from the left wall; a range with the columns x_ft
' rows: the grid rows from the front wall; a range with the columns y_ft
' rods: the readings, row by row; a range with the columns [rod_ft]
' benchmark_ft: elevation of the benchmark (ft); at least -3280.83989501 ft, at most 32808.3989501 ft
' backsight_ft: rod on the benchmark (ft); at least 0 ft, at most 32.8083989501 ft
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' steps: whether a row or column given twice, one after the other, is the two sides of a step; no or yes; left out: no, because a distance written twice is more often a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_RODS_US(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_US = Called("survey_from_rods", "us", "value", "", Array(outline, columns, rows, rods, benchmark_ft, backsight_ft, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_RODS_US_WHY(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_US_WHY = Called("survey_from_rods", "us", "why", "", Array(outline, columns, rows, rods, benchmark_ft, backsight_ft, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_RODS_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_ft As Variant, ByVal backsight_ft As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_US_GET = Called("survey_from_rods", "us", "get", result, Array(outline, columns, rows, rods, benchmark_ft, backsight_ft, instrument, texture, beyond_allowed, steps))
End Function

' The surface of the old slab through a grid of rod readings from one set-up.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' columns: the grid columns from the left wall; a range with the columns x_m
' rows: the grid rows from the front wall; a range with the columns y_m
' rods: the readings, row by row; a range with the columns [rod_m]
' benchmark_m: elevation of the benchmark (m); at least -1000 m, at most 10000 m
' backsight_m: rod on the benchmark (m); at least 0 m, at most 10 m
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' steps: whether a row or column given twice, one after the other, is the two sides of a step; no or yes; left out: no, because a distance written twice is more often a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_RODS_SI(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_m As Variant, ByVal backsight_m As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_SI = Called("survey_from_rods", "si", "value", "", Array(outline, columns, rows, rods, benchmark_m, backsight_m, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_RODS_SI_WHY(ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_m As Variant, ByVal backsight_m As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_SI_WHY = Called("survey_from_rods", "si", "why", "", Array(outline, columns, rows, rods, benchmark_m, backsight_m, instrument, texture, beyond_allowed, steps))
End Function

Public Function OVS_SURVEY_FROM_RODS_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal columns As Variant, ByVal rows As Variant, ByVal rods As Variant, ByVal benchmark_m As Variant, ByVal backsight_m As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal steps As Variant) As Variant
    OVS_SURVEY_FROM_RODS_SI_GET = Called("survey_from_rods", "si", "get", result, Array(outline, columns, rows, rods, benchmark_m, backsight_m, instrument, texture, beyond_allowed, steps))
End Function

' The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' Gives triangles (the triangles).
Public Function OVS_SURVEY_TRIANGLES_US(ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_US = Called("survey_triangles", "us", "value", "", Array(survey))
End Function

Public Function OVS_SURVEY_TRIANGLES_US_WHY(ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_US_WHY = Called("survey_triangles", "us", "why", "", Array(survey))
End Function

Public Function OVS_SURVEY_TRIANGLES_US_GET(ByVal result As Variant, ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_US_GET = Called("survey_triangles", "us", "get", result, Array(survey))
End Function

' The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' Gives triangles (the triangles).
Public Function OVS_SURVEY_TRIANGLES_SI(ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_SI = Called("survey_triangles", "si", "value", "", Array(survey))
End Function

Public Function OVS_SURVEY_TRIANGLES_SI_WHY(ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_SI_WHY = Called("survey_triangles", "si", "why", "", Array(survey))
End Function

Public Function OVS_SURVEY_TRIANGLES_SI_GET(ByVal result As Variant, ByVal survey As Variant) As Variant
    OVS_SURVEY_TRIANGLES_SI_GET = Called("survey_triangles", "si", "get", result, Array(survey))
End Function

' The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of ten; three of ten books without a slip name some shot.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' rod: how the rod is graduated; without it the readings tell; inches, tenths, metric or unknown; may be left out
' Gives suspects (the suspects, the farthest off first), judged (how many shots were judged), roughness_in (standard deviation that each shot has for itself: reading, texture and small waves), graduation (how the rod is graduated).
Public Function OVS_SURVEY_SUSPECTS_US(ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_US = Called("survey_suspects", "us", "value", "", Array(survey, rod))
End Function

Public Function OVS_SURVEY_SUSPECTS_US_WHY(ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_US_WHY = Called("survey_suspects", "us", "why", "", Array(survey, rod))
End Function

Public Function OVS_SURVEY_SUSPECTS_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_US_GET = Called("survey_suspects", "us", "get", result, Array(survey, rod))
End Function

' The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of ten; three of ten books without a slip name some shot.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' rod: how the rod is graduated; without it the readings tell; inches, tenths, metric or unknown; may be left out
' Gives suspects (the suspects, the farthest off first), judged (how many shots were judged), roughness_mm (standard deviation that each shot has for itself: reading, texture and small waves), graduation (how the rod is graduated).
Public Function OVS_SURVEY_SUSPECTS_SI(ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_SI = Called("survey_suspects", "si", "value", "", Array(survey, rod))
End Function

Public Function OVS_SURVEY_SUSPECTS_SI_WHY(ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_SI_WHY = Called("survey_suspects", "si", "why", "", Array(survey, rod))
End Function

Public Function OVS_SURVEY_SUSPECTS_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal rod As Variant) As Variant
    OVS_SURVEY_SUSPECTS_SI_GET = Called("survey_suspects", "si", "get", result, Array(survey, rod))
End Function

' The old slab without the shots named; the others keep their names.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' leave_out: the shots to leave out; a range with the columns name
' Gives survey (the old slab without them).
Public Function OVS_SURVEY_WITHOUT_US(ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_US = Called("survey_without", "us", "value", "", Array(survey, leave_out))
End Function

Public Function OVS_SURVEY_WITHOUT_US_WHY(ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_US_WHY = Called("survey_without", "us", "why", "", Array(survey, leave_out))
End Function

Public Function OVS_SURVEY_WITHOUT_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_US_GET = Called("survey_without", "us", "get", result, Array(survey, leave_out))
End Function

' The old slab without the shots named; the others keep their names.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' leave_out: the shots to leave out; a range with the columns name
' Gives survey (the old slab without them).
Public Function OVS_SURVEY_WITHOUT_SI(ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_SI = Called("survey_without", "si", "value", "", Array(survey, leave_out))
End Function

Public Function OVS_SURVEY_WITHOUT_SI_WHY(ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_SI_WHY = Called("survey_without", "si", "why", "", Array(survey, leave_out))
End Function

Public Function OVS_SURVEY_WITHOUT_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal leave_out As Variant) As Variant
    OVS_SURVEY_WITHOUT_SI_GET = Called("survey_without", "si", "get", result, Array(survey, leave_out))
End Function

' How much of the work lies too far from any shot, and where the next shots belong.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' near_ft: how near a shot should be to every place (ft); at least 0.0416666666667 ft, at most 328.083989501 ft; left out: 6 ft, because a grid of 8 ft leaves no place farther, common practice, no source
' most: how many places for more shots to tell; a whole number from 0 to 500; left out: 12, because an hour's work
' Gives area_ft2 (area of the work), uncovered_ft2 (area farther than that from every shot), share_percent (its share of the work), beyond_ft2 (area beyond the last shots), unsurveyed_ft2 (area in triangles that leave the outline), farthest_ft (the farthest any place is from a shot), farthest_x_ft (where it is, from the left), farthest_y_ft (where it is, from the front), next (where the next shots belong, until every place is near enough).
Public Function OVS_SURVEY_COVERAGE_US(ByVal survey As Variant, Optional ByVal near_ft As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_US = Called("survey_coverage", "us", "value", "", Array(survey, near_ft, most))
End Function

Public Function OVS_SURVEY_COVERAGE_US_WHY(ByVal survey As Variant, Optional ByVal near_ft As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_US_WHY = Called("survey_coverage", "us", "why", "", Array(survey, near_ft, most))
End Function

Public Function OVS_SURVEY_COVERAGE_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal near_ft As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_US_GET = Called("survey_coverage", "us", "get", result, Array(survey, near_ft, most))
End Function

' How much of the work lies too far from any shot, and where the next shots belong.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' near_m: how near a shot should be to every place (m); at least 0.0127 m, at most 100 m; left out: 6 ft, because a grid of 8 ft leaves no place farther, common practice, no source
' most: how many places for more shots to tell; a whole number from 0 to 500; left out: 12, because an hour's work
' Gives area_m2 (area of the work), uncovered_m2 (area farther than that from every shot), share_percent (its share of the work), beyond_m2 (area beyond the last shots), unsurveyed_m2 (area in triangles that leave the outline), farthest_m (the farthest any place is from a shot), farthest_x_m (where it is, from the left), farthest_y_m (where it is, from the front), next (where the next shots belong, until every place is near enough).
Public Function OVS_SURVEY_COVERAGE_SI(ByVal survey As Variant, Optional ByVal near_m As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_SI = Called("survey_coverage", "si", "value", "", Array(survey, near_m, most))
End Function

Public Function OVS_SURVEY_COVERAGE_SI_WHY(ByVal survey As Variant, Optional ByVal near_m As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_SI_WHY = Called("survey_coverage", "si", "why", "", Array(survey, near_m, most))
End Function

Public Function OVS_SURVEY_COVERAGE_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal near_m As Variant, Optional ByVal most As Variant) As Variant
    OVS_SURVEY_COVERAGE_SI_GET = Called("survey_coverage", "si", "get", result, Array(survey, near_m, most))
End Function

' Whether the line of sight of a level or laser is level, from readings on two pegs.
' middle_a_ft: rod on peg A from half way between the pegs (ft); at least 0 ft, at most 32.8083989501 ft
' middle_b_ft: rod on peg B from there (ft); at least 0 ft, at most 32.8083989501 ft
' end_a_ft: rod on peg A from near one peg (ft); at least 0 ft, at most 32.8083989501 ft
' end_b_ft: rod on peg B from there (ft); at least 0 ft, at most 32.8083989501 ft
' distance_a_ft: from the instrument to peg A in the second set-up (ft); at least 0 ft, at most 3280.83989501 ft
' distance_b_ft: from the instrument to peg B in the second set-up (ft); at least 0 ft, at most 3280.83989501 ft
' limit_in_per_ft: the tilt allowed (in/ft); at least 0 in/ft, at most 1.2 in/ft; left out: 0.00125 in/ft, because 1/16 in per 50 ft, common practice, no source
' Gives rise_ft (how much higher peg B stands than peg A), tilt_in_per_ft (rise of the line of sight over the distance), right_a_ft (what the second set-up should read on peg A), right_b_ft (what it should read on peg B), off_in (how much too high it reads on the farther peg), passes (whether the tilt is within what is allowed), good_for_ft (difference of sights to benchmark and shot that the tilt turns into 1/8 in).
Public Function OVS_TWO_PEG_TEST_US(ByVal middle_a_ft As Variant, ByVal middle_b_ft As Variant, ByVal end_a_ft As Variant, ByVal end_b_ft As Variant, ByVal distance_a_ft As Variant, ByVal distance_b_ft As Variant, Optional ByVal limit_in_per_ft As Variant) As Variant
    OVS_TWO_PEG_TEST_US = Called("two_peg_test", "us", "value", "", Array(middle_a_ft, middle_b_ft, end_a_ft, end_b_ft, distance_a_ft, distance_b_ft, limit_in_per_ft))
End Function

Public Function OVS_TWO_PEG_TEST_US_WHY(ByVal middle_a_ft As Variant, ByVal middle_b_ft As Variant, ByVal end_a_ft As Variant, ByVal end_b_ft As Variant, ByVal distance_a_ft As Variant, ByVal distance_b_ft As Variant, Optional ByVal limit_in_per_ft As Variant) As Variant
    OVS_TWO_PEG_TEST_US_WHY = Called("two_peg_test", "us", "why", "", Array(middle_a_ft, middle_b_ft, end_a_ft, end_b_ft, distance_a_ft, distance_b_ft, limit_in_per_ft))
End Function

Public Function OVS_TWO_PEG_TEST_US_GET(ByVal result As Variant, ByVal middle_a_ft As Variant, ByVal middle_b_ft As Variant, ByVal end_a_ft As Variant, ByVal end_b_ft As Variant, ByVal distance_a_ft As Variant, ByVal distance_b_ft As Variant, Optional ByVal limit_in_per_ft As Variant) As Variant
    OVS_TWO_PEG_TEST_US_GET = Called("two_peg_test", "us", "get", result, Array(middle_a_ft, middle_b_ft, end_a_ft, end_b_ft, distance_a_ft, distance_b_ft, limit_in_per_ft))
End Function

' Whether the line of sight of a level or laser is level, from readings on two pegs.
' middle_a_m: rod on peg A from half way between the pegs (m); at least 0 m, at most 10 m
' middle_b_m: rod on peg B from there (m); at least 0 m, at most 10 m
' end_a_m: rod on peg A from near one peg (m); at least 0 m, at most 10 m
' end_b_m: rod on peg B from there (m); at least 0 m, at most 10 m
' distance_a_m: from the instrument to peg A in the second set-up (m); at least 0 m, at most 1000 m
' distance_b_m: from the instrument to peg B in the second set-up (m); at least 0 m, at most 1000 m
' limit_mm_per_m: the tilt allowed (mm/m); at least 0 mm/m, at most 100 mm/m; left out: 0.00125 in/ft, because 1/16 in per 50 ft, common practice, no source
' Gives rise_m (how much higher peg B stands than peg A), tilt_mm_per_m (rise of the line of sight over the distance), right_a_m (what the second set-up should read on peg A), right_b_m (what it should read on peg B), off_mm (how much too high it reads on the farther peg), passes (whether the tilt is within what is allowed), good_for_m (difference of sights to benchmark and shot that the tilt turns into 1/8 in).
Public Function OVS_TWO_PEG_TEST_SI(ByVal middle_a_m As Variant, ByVal middle_b_m As Variant, ByVal end_a_m As Variant, ByVal end_b_m As Variant, ByVal distance_a_m As Variant, ByVal distance_b_m As Variant, Optional ByVal limit_mm_per_m As Variant) As Variant
    OVS_TWO_PEG_TEST_SI = Called("two_peg_test", "si", "value", "", Array(middle_a_m, middle_b_m, end_a_m, end_b_m, distance_a_m, distance_b_m, limit_mm_per_m))
End Function

Public Function OVS_TWO_PEG_TEST_SI_WHY(ByVal middle_a_m As Variant, ByVal middle_b_m As Variant, ByVal end_a_m As Variant, ByVal end_b_m As Variant, ByVal distance_a_m As Variant, ByVal distance_b_m As Variant, Optional ByVal limit_mm_per_m As Variant) As Variant
    OVS_TWO_PEG_TEST_SI_WHY = Called("two_peg_test", "si", "why", "", Array(middle_a_m, middle_b_m, end_a_m, end_b_m, distance_a_m, distance_b_m, limit_mm_per_m))
End Function

Public Function OVS_TWO_PEG_TEST_SI_GET(ByVal result As Variant, ByVal middle_a_m As Variant, ByVal middle_b_m As Variant, ByVal end_a_m As Variant, ByVal end_b_m As Variant, ByVal distance_a_m As Variant, ByVal distance_b_m As Variant, Optional ByVal limit_mm_per_m As Variant) As Variant
    OVS_TWO_PEG_TEST_SI_GET = Called("two_peg_test", "si", "get", result, Array(middle_a_m, middle_b_m, end_a_m, end_b_m, distance_a_m, distance_b_m, limit_mm_per_m))
End Function

' The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by the first.
' first_ft: rod on the benchmark before (ft); at least 0 ft, at most 32.8083989501 ft
' again_ft: rod on the benchmark after; add the difference to every rod mark (ft); at least 0 ft, at most 32.8083989501 ft
' shots: the readings between; a range with the columns rod_ft, [time_min]; may be left out
' time_again_min: when the benchmark was read again (min); at least 0 min; may be left out
' tolerance_in: how far the two may be off (in); at least 0 in; left out: 1/8 in, because one set-up closes within 1/8 in, common practice, no source
' Gives difference_in (again less first), follows (what follows), shared_out (the readings with their shares; none where it is off by too much), said (the same in a sentence).
Public Function OVS_BENCHMARK_RECHECK_US(ByVal first_ft As Variant, ByVal again_ft As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_BENCHMARK_RECHECK_US = Called("benchmark_recheck", "us", "value", "", Array(first_ft, again_ft, shots, time_again_min, tolerance_in))
End Function

Public Function OVS_BENCHMARK_RECHECK_US_WHY(ByVal first_ft As Variant, ByVal again_ft As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_BENCHMARK_RECHECK_US_WHY = Called("benchmark_recheck", "us", "why", "", Array(first_ft, again_ft, shots, time_again_min, tolerance_in))
End Function

Public Function OVS_BENCHMARK_RECHECK_US_GET(ByVal result As Variant, ByVal first_ft As Variant, ByVal again_ft As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_BENCHMARK_RECHECK_US_GET = Called("benchmark_recheck", "us", "get", result, Array(first_ft, again_ft, shots, time_again_min, tolerance_in))
End Function

' The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by the first.
' first_m: rod on the benchmark before (m); at least 0 m, at most 10 m
' again_m: rod on the benchmark after; add the difference to every rod mark (m); at least 0 m, at most 10 m
' shots: the readings between; a range with the columns rod_m, [time_min]; may be left out
' time_again_min: when the benchmark was read again (min); at least 0 min; may be left out
' tolerance_mm: how far the two may be off (mm); at least 0 mm; left out: 1/8 in, because one set-up closes within 1/8 in, common practice, no source
' Gives difference_mm (again less first), follows (what follows), shared_out (the readings with their shares; none where it is off by too much), said (the same in a sentence).
Public Function OVS_BENCHMARK_RECHECK_SI(ByVal first_m As Variant, ByVal again_m As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_BENCHMARK_RECHECK_SI = Called("benchmark_recheck", "si", "value", "", Array(first_m, again_m, shots, time_again_min, tolerance_mm))
End Function

Public Function OVS_BENCHMARK_RECHECK_SI_WHY(ByVal first_m As Variant, ByVal again_m As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_BENCHMARK_RECHECK_SI_WHY = Called("benchmark_recheck", "si", "why", "", Array(first_m, again_m, shots, time_again_min, tolerance_mm))
End Function

Public Function OVS_BENCHMARK_RECHECK_SI_GET(ByVal result As Variant, ByVal first_m As Variant, ByVal again_m As Variant, Optional ByVal shots As Variant, Optional ByVal time_again_min As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_BENCHMARK_RECHECK_SI_GET = Called("benchmark_recheck", "si", "get", result, Array(first_m, again_m, shots, time_again_min, tolerance_mm))
End Function

' Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
' points: the points; a range with the columns x_ft, y_ft, elevation_ft, [name]
' Gives points (the points).
Public Function OVS_POINTS_FROM_TABLE_US(ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_US = Called("points_from_table", "us", "value", "", Array(points))
End Function

Public Function OVS_POINTS_FROM_TABLE_US_WHY(ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_US_WHY = Called("points_from_table", "us", "why", "", Array(points))
End Function

Public Function OVS_POINTS_FROM_TABLE_US_GET(ByVal result As Variant, ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_US_GET = Called("points_from_table", "us", "get", result, Array(points))
End Function

' Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
' points: the points; a range with the columns x_m, y_m, elevation_m, [name]
' Gives points (the points).
Public Function OVS_POINTS_FROM_TABLE_SI(ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_SI = Called("points_from_table", "si", "value", "", Array(points))
End Function

Public Function OVS_POINTS_FROM_TABLE_SI_WHY(ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_SI_WHY = Called("points_from_table", "si", "why", "", Array(points))
End Function

Public Function OVS_POINTS_FROM_TABLE_SI_GET(ByVal result As Variant, ByVal points As Variant) As Variant
    OVS_POINTS_FROM_TABLE_SI_GET = Called("points_from_table", "si", "get", result, Array(points))
End Function

' Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
' file: the bytes of the file; the text of a file, or base64: and its bytes in base64
' format_value: what the file is; found from its first bytes where left out; csv, xyz, ply, las, e57 or landxml; may be left out
' unit: the unit of its numbers, for a file that does not say it; m, cm, mm, ft, us_survey_ft, in or yd; may be left out
' overrule: whether the unit given holds even where the file says another; no or yes; left out: no, because a file mostly knows its unit
' columns: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation [in], skip; a text; may be left out
' height_of_instrument_ft: height of the line of sight, for a column of rods (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' ground_only: whether only points that the file classes as ground are used; no or yes; left out: no, because few scans are classed
' Gives points (the points), format (what the file is), unit (the unit of its numbers, where all have one), left_out (points of the file that were not used).
Public Function OVS_READ_POINTS_US(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_ft As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_US = Called("read_points", "us", "value", "", Array(file, format_value, unit, overrule, columns, height_of_instrument_ft, ground_only))
End Function

Public Function OVS_READ_POINTS_US_WHY(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_ft As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_US_WHY = Called("read_points", "us", "why", "", Array(file, format_value, unit, overrule, columns, height_of_instrument_ft, ground_only))
End Function

Public Function OVS_READ_POINTS_US_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_ft As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_US_GET = Called("read_points", "us", "get", result, Array(file, format_value, unit, overrule, columns, height_of_instrument_ft, ground_only))
End Function

' Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
' file: the bytes of the file; the text of a file, or base64: and its bytes in base64
' format_value: what the file is; found from its first bytes where left out; csv, xyz, ply, las, e57 or landxml; may be left out
' unit: the unit of its numbers, for a file that does not say it; m, cm, mm, ft, us_survey_ft, in or yd; may be left out
' overrule: whether the unit given holds even where the file says another; no or yes; left out: no, because a file mostly knows its unit
' columns: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation [in], skip; a text; may be left out
' height_of_instrument_m: height of the line of sight, for a column of rods (m); at least -10000 m, at most 10000 m; may be left out
' ground_only: whether only points that the file classes as ground are used; no or yes; left out: no, because few scans are classed
' Gives points (the points), format (what the file is), unit (the unit of its numbers, where all have one), left_out (points of the file that were not used).
Public Function OVS_READ_POINTS_SI(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_m As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_SI = Called("read_points", "si", "value", "", Array(file, format_value, unit, overrule, columns, height_of_instrument_m, ground_only))
End Function

Public Function OVS_READ_POINTS_SI_WHY(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_m As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_SI_WHY = Called("read_points", "si", "why", "", Array(file, format_value, unit, overrule, columns, height_of_instrument_m, ground_only))
End Function

Public Function OVS_READ_POINTS_SI_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal columns As Variant, Optional ByVal height_of_instrument_m As Variant, Optional ByVal ground_only As Variant) As Variant
    OVS_READ_POINTS_SI_GET = Called("read_points", "si", "get", result, Array(file, format_value, unit, overrule, columns, height_of_instrument_m, ground_only))
End Function

' A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
' file: the bytes of the file; the text of a file, or base64: and its bytes in base64
' format_value: what the file is; found from its first bytes where left out; csv, xyz, ply, las, e57 or landxml; may be left out
' unit: the unit of its numbers, for a file that does not say it; m, cm, mm, ft, us_survey_ft, in or yd; may be left out
' overrule: whether the unit given holds even where the file says another; no or yes; left out: no, because a file mostly knows its unit
' surface: its name, for a file with several; a text; may be left out
' Gives tin (the surface), format (what the file is), unit (the unit of its numbers, where all have one), left_out (points of the file that were not used).
Public Function OVS_READ_SURFACE_US(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_US = Called("read_surface", "us", "value", "", Array(file, format_value, unit, overrule, surface))
End Function

Public Function OVS_READ_SURFACE_US_WHY(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_US_WHY = Called("read_surface", "us", "why", "", Array(file, format_value, unit, overrule, surface))
End Function

Public Function OVS_READ_SURFACE_US_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_US_GET = Called("read_surface", "us", "get", result, Array(file, format_value, unit, overrule, surface))
End Function

' A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
' file: the bytes of the file; the text of a file, or base64: and its bytes in base64
' format_value: what the file is; found from its first bytes where left out; csv, xyz, ply, las, e57 or landxml; may be left out
' unit: the unit of its numbers, for a file that does not say it; m, cm, mm, ft, us_survey_ft, in or yd; may be left out
' overrule: whether the unit given holds even where the file says another; no or yes; left out: no, because a file mostly knows its unit
' surface: its name, for a file with several; a text; may be left out
' Gives tin (the surface), format (what the file is), unit (the unit of its numbers, where all have one), left_out (points of the file that were not used).
Public Function OVS_READ_SURFACE_SI(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_SI = Called("read_surface", "si", "value", "", Array(file, format_value, unit, overrule, surface))
End Function

Public Function OVS_READ_SURFACE_SI_WHY(ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_SI_WHY = Called("read_surface", "si", "why", "", Array(file, format_value, unit, overrule, surface))
End Function

Public Function OVS_READ_SURFACE_SI_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal format_value As Variant, Optional ByVal unit As Variant, Optional ByVal overrule As Variant, Optional ByVal surface As Variant) As Variant
    OVS_READ_SURFACE_SI_GET = Called("read_surface", "si", "get", result, Array(file, format_value, unit, overrule, surface))
End Function

' Points brought into the axes of the job by two known points or more: turned, shifted and raised, never stretched.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_US gives
' known: the points known in both systems; a range with the columns [name], x_ft, y_ft, job_x_ft, job_y_ft, [elevation_ft], [job_elevation_ft]
' tolerance_in: how far distances of two, places of more may be off (in); at least 0 in, at most 39.3700787402 in; left out: 1/4 in, because a nail is found again so well
' height_tolerance_in: how far heights may be off (in); at least 0 in, at most 39.3700787402 in; left out: 1/8 in, because a rod is read so well
' levelling: whether heights rise alike or by a plane; rise or tilt; left out: rise, because most scanners level themselves
' Gives moved (the points in the axes of the job), turn_deg (how far they were turned, counter-clockwise), rise_ft (what was added to heights, where the old origin came to lie), tilt_x_in_per_ft (how much more along the first axis of the job), tilt_y_in_per_ft (how much more along the second), residuals (what is left over at the known points).
Public Function OVS_POINTS_TO_AXES_US(ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal height_tolerance_in As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_US = Called("points_to_axes", "us", "value", "", Array(points, known, tolerance_in, height_tolerance_in, levelling))
End Function

Public Function OVS_POINTS_TO_AXES_US_WHY(ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal height_tolerance_in As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_US_WHY = Called("points_to_axes", "us", "why", "", Array(points, known, tolerance_in, height_tolerance_in, levelling))
End Function

Public Function OVS_POINTS_TO_AXES_US_GET(ByVal result As Variant, ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal height_tolerance_in As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_US_GET = Called("points_to_axes", "us", "get", result, Array(points, known, tolerance_in, height_tolerance_in, levelling))
End Function

' Points brought into the axes of the job by two known points or more: turned, shifted and raised, never stretched.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_SI gives
' known: the points known in both systems; a range with the columns [name], x_m, y_m, job_x_m, job_y_m, [elevation_m], [job_elevation_m]
' tolerance_mm: how far distances of two, places of more may be off (mm); at least 0 mm, at most 1000 mm; left out: 1/4 in, because a nail is found again so well
' height_tolerance_mm: how far heights may be off (mm); at least 0 mm, at most 1000 mm; left out: 1/8 in, because a rod is read so well
' levelling: whether heights rise alike or by a plane; rise or tilt; left out: rise, because most scanners level themselves
' Gives moved (the points in the axes of the job), turn_rad (how far they were turned, counter-clockwise), rise_m (what was added to heights, where the old origin came to lie), tilt_x_percent (how much more along the first axis of the job), tilt_y_percent (how much more along the second), residuals (what is left over at the known points).
Public Function OVS_POINTS_TO_AXES_SI(ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal height_tolerance_mm As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_SI = Called("points_to_axes", "si", "value", "", Array(points, known, tolerance_mm, height_tolerance_mm, levelling))
End Function

Public Function OVS_POINTS_TO_AXES_SI_WHY(ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal height_tolerance_mm As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_SI_WHY = Called("points_to_axes", "si", "why", "", Array(points, known, tolerance_mm, height_tolerance_mm, levelling))
End Function

Public Function OVS_POINTS_TO_AXES_SI_GET(ByVal result As Variant, ByVal points As Variant, ByVal known As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal height_tolerance_mm As Variant, Optional ByVal levelling As Variant) As Variant
    OVS_POINTS_TO_AXES_SI_GET = Called("points_to_axes", "si", "get", result, Array(points, known, tolerance_mm, height_tolerance_mm, levelling))
End Function

' Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_US gives
' origin_x_ft: the end of the wall that becomes zero, along the first axis (ft); at least -3280839895.01 ft, at most 3280839895.01 ft
' origin_y_ft: the same, along the second axis (ft); at least -3280839895.01 ft, at most 3280839895.01 ft
' along_x_ft: another place along the wall, along the first axis (ft); at least -3280839895.01 ft, at most 3280839895.01 ft
' along_y_ft: the same, along the second axis (ft); at least -3280839895.01 ft, at most 3280839895.01 ft
' Gives moved (the points in the new axes), turn_deg (how far they were turned, counter-clockwise).
Public Function OVS_POINTS_ALONG_WALL_US(ByVal points As Variant, ByVal origin_x_ft As Variant, ByVal origin_y_ft As Variant, ByVal along_x_ft As Variant, ByVal along_y_ft As Variant) As Variant
    OVS_POINTS_ALONG_WALL_US = Called("points_along_wall", "us", "value", "", Array(points, origin_x_ft, origin_y_ft, along_x_ft, along_y_ft))
End Function

Public Function OVS_POINTS_ALONG_WALL_US_WHY(ByVal points As Variant, ByVal origin_x_ft As Variant, ByVal origin_y_ft As Variant, ByVal along_x_ft As Variant, ByVal along_y_ft As Variant) As Variant
    OVS_POINTS_ALONG_WALL_US_WHY = Called("points_along_wall", "us", "why", "", Array(points, origin_x_ft, origin_y_ft, along_x_ft, along_y_ft))
End Function

Public Function OVS_POINTS_ALONG_WALL_US_GET(ByVal result As Variant, ByVal points As Variant, ByVal origin_x_ft As Variant, ByVal origin_y_ft As Variant, ByVal along_x_ft As Variant, ByVal along_y_ft As Variant) As Variant
    OVS_POINTS_ALONG_WALL_US_GET = Called("points_along_wall", "us", "get", result, Array(points, origin_x_ft, origin_y_ft, along_x_ft, along_y_ft))
End Function

' Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_SI gives
' origin_x_m: the end of the wall that becomes zero, along the first axis (m); at least -1000000000 m, at most 1000000000 m
' origin_y_m: the same, along the second axis (m); at least -1000000000 m, at most 1000000000 m
' along_x_m: another place along the wall, along the first axis (m); at least -1000000000 m, at most 1000000000 m
' along_y_m: the same, along the second axis (m); at least -1000000000 m, at most 1000000000 m
' Gives moved (the points in the new axes), turn_rad (how far they were turned, counter-clockwise).
Public Function OVS_POINTS_ALONG_WALL_SI(ByVal points As Variant, ByVal origin_x_m As Variant, ByVal origin_y_m As Variant, ByVal along_x_m As Variant, ByVal along_y_m As Variant) As Variant
    OVS_POINTS_ALONG_WALL_SI = Called("points_along_wall", "si", "value", "", Array(points, origin_x_m, origin_y_m, along_x_m, along_y_m))
End Function

Public Function OVS_POINTS_ALONG_WALL_SI_WHY(ByVal points As Variant, ByVal origin_x_m As Variant, ByVal origin_y_m As Variant, ByVal along_x_m As Variant, ByVal along_y_m As Variant) As Variant
    OVS_POINTS_ALONG_WALL_SI_WHY = Called("points_along_wall", "si", "why", "", Array(points, origin_x_m, origin_y_m, along_x_m, along_y_m))
End Function

Public Function OVS_POINTS_ALONG_WALL_SI_GET(ByVal result As Variant, ByVal points As Variant, ByVal origin_x_m As Variant, ByVal origin_y_m As Variant, ByVal along_x_m As Variant, ByVal along_y_m As Variant) As Variant
    OVS_POINTS_ALONG_WALL_SI_GET = Called("points_along_wall", "si", "get", result, Array(points, origin_x_m, origin_y_m, along_x_m, along_y_m))
End Function

' The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points far away.
' points: the points of the scan; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_US gives
' above_in: higher than this over the floor is stray (in); more than 0 in, at most 393.700787402 in; left out: 1 in, because a step of an inch in an old slab is common
' below_in: deeper than this under the floor is stray (in); more than 0 in, at most 393.700787402 in; left out: 1 in, because hollows of an old slab are wider than a cell and stay
' widest_ft: width of the widest thing that stands on the floor (ft); more than 0 ft, at most 328.083989501 ft; left out: 6 ft, because few things left in a cleared shop are wider
' cell_in: width of the cells in which the floor is looked for (in); more than 0 in, at most 3937.00787402 in; left out: 6 in, because a scan has many points in each
' steepest_in_per_ft: the steepest that the floor is (in/ft); at least 0 in/ft, at most 6 in/ft; left out: 1/4 in/ft, because floors that drain seldom fall more
' reach_ft: how near others must be (ft); more than 0 ft, at most 328.083989501 ft; left out: 1 ft, because a scan has many points in a foot
' others: how many others must be so near; a whole number from 0 to 1000; left out: 3, because echoes come one by one
' Gives floor (the points kept), kept_count (how many were kept), above_count (how many stand above the floor), below_count (how many lie below it), alone_count (how many have too few others near them), strays (which points were taken out, and why).
Public Function OVS_PART_STRAYS_US(ByVal points As Variant, Optional ByVal above_in As Variant, Optional ByVal below_in As Variant, Optional ByVal widest_ft As Variant, Optional ByVal cell_in As Variant, Optional ByVal steepest_in_per_ft As Variant, Optional ByVal reach_ft As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_US = Called("part_strays", "us", "value", "", Array(points, above_in, below_in, widest_ft, cell_in, steepest_in_per_ft, reach_ft, others))
End Function

Public Function OVS_PART_STRAYS_US_WHY(ByVal points As Variant, Optional ByVal above_in As Variant, Optional ByVal below_in As Variant, Optional ByVal widest_ft As Variant, Optional ByVal cell_in As Variant, Optional ByVal steepest_in_per_ft As Variant, Optional ByVal reach_ft As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_US_WHY = Called("part_strays", "us", "why", "", Array(points, above_in, below_in, widest_ft, cell_in, steepest_in_per_ft, reach_ft, others))
End Function

Public Function OVS_PART_STRAYS_US_GET(ByVal result As Variant, ByVal points As Variant, Optional ByVal above_in As Variant, Optional ByVal below_in As Variant, Optional ByVal widest_ft As Variant, Optional ByVal cell_in As Variant, Optional ByVal steepest_in_per_ft As Variant, Optional ByVal reach_ft As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_US_GET = Called("part_strays", "us", "get", result, Array(points, above_in, below_in, widest_ft, cell_in, steepest_in_per_ft, reach_ft, others))
End Function

' The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points far away.
' points: the points of the scan; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_SI gives
' above_mm: higher than this over the floor is stray (mm); more than 0 mm, at most 10000 mm; left out: 1 in, because a step of an inch in an old slab is common
' below_mm: deeper than this under the floor is stray (mm); more than 0 mm, at most 10000 mm; left out: 1 in, because hollows of an old slab are wider than a cell and stay
' widest_m: width of the widest thing that stands on the floor (m); more than 0 m, at most 100 m; left out: 6 ft, because few things left in a cleared shop are wider
' cell_mm: width of the cells in which the floor is looked for (mm); more than 0 mm, at most 100000 mm; left out: 6 in, because a scan has many points in each
' steepest_percent: the steepest that the floor is (%); at least 0 %, at most 50 %; left out: 1/4 in/ft, because floors that drain seldom fall more
' reach_m: how near others must be (m); more than 0 m, at most 100 m; left out: 1 ft, because a scan has many points in a foot
' others: how many others must be so near; a whole number from 0 to 1000; left out: 3, because echoes come one by one
' Gives floor (the points kept), kept_count (how many were kept), above_count (how many stand above the floor), below_count (how many lie below it), alone_count (how many have too few others near them), strays (which points were taken out, and why).
Public Function OVS_PART_STRAYS_SI(ByVal points As Variant, Optional ByVal above_mm As Variant, Optional ByVal below_mm As Variant, Optional ByVal widest_m As Variant, Optional ByVal cell_mm As Variant, Optional ByVal steepest_percent As Variant, Optional ByVal reach_m As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_SI = Called("part_strays", "si", "value", "", Array(points, above_mm, below_mm, widest_m, cell_mm, steepest_percent, reach_m, others))
End Function

Public Function OVS_PART_STRAYS_SI_WHY(ByVal points As Variant, Optional ByVal above_mm As Variant, Optional ByVal below_mm As Variant, Optional ByVal widest_m As Variant, Optional ByVal cell_mm As Variant, Optional ByVal steepest_percent As Variant, Optional ByVal reach_m As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_SI_WHY = Called("part_strays", "si", "why", "", Array(points, above_mm, below_mm, widest_m, cell_mm, steepest_percent, reach_m, others))
End Function

Public Function OVS_PART_STRAYS_SI_GET(ByVal result As Variant, ByVal points As Variant, Optional ByVal above_mm As Variant, Optional ByVal below_mm As Variant, Optional ByVal widest_m As Variant, Optional ByVal cell_mm As Variant, Optional ByVal steepest_percent As Variant, Optional ByVal reach_m As Variant, Optional ByVal others As Variant) As Variant
    OVS_PART_STRAYS_SI_GET = Called("part_strays", "si", "get", result, Array(points, above_mm, below_mm, widest_m, cell_mm, steepest_percent, reach_m, others))
End Function

' Fewer points that say the same: the surface of a survey through them stays within a height error of every point left out.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_US gives
' within_in: the height error allowed: this or the count (in); at least 0 in, at most 393700.787402 in; may be left out
' count: how many points to keep: this or the height error; a whole number from 3 to 4294967295; may be left out
' outline: the plan edge of the work; points more than 1/2 in outside it are left out; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives thinned (the points kept), kept_count (how many were kept), error_in (greatest height between the surface through them and a point left out), worst (the number of the point it is at), hull_count (how many of those kept are corners of the convex hull), outside_count (how many lie outside the outline), kept (which points were kept).
Public Function OVS_THIN_POINTS_US(ByVal points As Variant, Optional ByVal within_in As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_US = Called("thin_points", "us", "value", "", Array(points, within_in, count, outline))
End Function

Public Function OVS_THIN_POINTS_US_WHY(ByVal points As Variant, Optional ByVal within_in As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_US_WHY = Called("thin_points", "us", "why", "", Array(points, within_in, count, outline))
End Function

Public Function OVS_THIN_POINTS_US_GET(ByVal result As Variant, ByVal points As Variant, Optional ByVal within_in As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_US_GET = Called("thin_points", "us", "get", result, Array(points, within_in, count, outline))
End Function

' Fewer points that say the same: the surface of a survey through them stays within a height error of every point left out.
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_SI gives
' within_mm: the height error allowed: this or the count (mm); at least 0 mm, at most 10000000 mm; may be left out
' count: how many points to keep: this or the height error; a whole number from 3 to 4294967295; may be left out
' outline: the plan edge of the work; points more than 1/2 in outside it are left out; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives thinned (the points kept), kept_count (how many were kept), error_mm (greatest height between the surface through them and a point left out), worst (the number of the point it is at), hull_count (how many of those kept are corners of the convex hull), outside_count (how many lie outside the outline), kept (which points were kept).
Public Function OVS_THIN_POINTS_SI(ByVal points As Variant, Optional ByVal within_mm As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_SI = Called("thin_points", "si", "value", "", Array(points, within_mm, count, outline))
End Function

Public Function OVS_THIN_POINTS_SI_WHY(ByVal points As Variant, Optional ByVal within_mm As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_SI_WHY = Called("thin_points", "si", "why", "", Array(points, within_mm, count, outline))
End Function

Public Function OVS_THIN_POINTS_SI_GET(ByVal result As Variant, ByVal points As Variant, Optional ByVal within_mm As Variant, Optional ByVal count As Variant, Optional ByVal outline As Variant) As Variant
    OVS_THIN_POINTS_SI_GET = Called("thin_points", "si", "get", result, Array(points, within_mm, count, outline))
End Function

' The surface of the old slab through points, each a shot: of a file, a scan or a table.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_US gives
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' outside: what becomes of points more than 6 in outside the outline; refuse, use or leave_out; left out: refuse, because a point outside may be a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_POINTS_US(ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_US = Called("survey_from_points", "us", "value", "", Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

Public Function OVS_SURVEY_FROM_POINTS_US_WHY(ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_US_WHY = Called("survey_from_points", "us", "why", "", Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

Public Function OVS_SURVEY_FROM_POINTS_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_US_GET = Called("survey_from_points", "us", "get", result, Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

' The surface of the old slab through points, each a shot: of a file, a scan or a table.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' points: the points; a range of path, value, unit, as OVS_POINTS_FROM_TABLE_SI gives
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' outside: what becomes of points more than 6 in outside the outline; refuse, use or leave_out; left out: refuse, because a point outside may be a slip
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_POINTS_SI(ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_SI = Called("survey_from_points", "si", "value", "", Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

Public Function OVS_SURVEY_FROM_POINTS_SI_WHY(ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_SI_WHY = Called("survey_from_points", "si", "why", "", Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

Public Function OVS_SURVEY_FROM_POINTS_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal points As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant, Optional ByVal outside As Variant) As Variant
    OVS_SURVEY_FROM_POINTS_SI_GET = Called("survey_from_points", "si", "get", result, Array(outline, points, instrument, texture, beyond_allowed, outside))
End Function

' The surface of the old slab over a triangulated surface of a file, its faces kept as they are.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives
' tin: the triangulated surface; a range of path, value, unit
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_TIN_US(ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_US = Called("survey_from_tin", "us", "value", "", Array(outline, tin, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_TIN_US_WHY(ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_US_WHY = Called("survey_from_tin", "us", "why", "", Array(outline, tin, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_TIN_US_GET(ByVal result As Variant, ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_US_GET = Called("survey_from_tin", "us", "get", result, Array(outline, tin, instrument, texture, beyond_allowed))
End Function

' The surface of the old slab over a triangulated surface of a file, its faces kept as they are.
' outline: the plan edge of the work; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives
' tin: the triangulated surface; a range of path, value, unit
' instrument: what the readings were taken with; laser, optical_hundredths, optical_eighths, optical_sixteenths, optical_millimetres, string or water; left out: laser, because most crews have one
' texture: what the old floor feels like; trowelled, broomed, scaled or rough; left out: broomed, because most old slabs are
' beyond_allowed: whether the work may reach more than 4 ft beyond the shots; no or yes; left out: no, because heights that far out are a guess
' Gives survey (the surveyed old slab).
Public Function OVS_SURVEY_FROM_TIN_SI(ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_SI = Called("survey_from_tin", "si", "value", "", Array(outline, tin, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_TIN_SI_WHY(ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_SI_WHY = Called("survey_from_tin", "si", "why", "", Array(outline, tin, instrument, texture, beyond_allowed))
End Function

Public Function OVS_SURVEY_FROM_TIN_SI_GET(ByVal result As Variant, ByVal outline As Variant, ByVal tin As Variant, Optional ByVal instrument As Variant, Optional ByVal texture As Variant, Optional ByVal beyond_allowed As Variant) As Variant
    OVS_SURVEY_FROM_TIN_SI_GET = Called("survey_from_tin", "si", "get", result, Array(outline, tin, instrument, texture, beyond_allowed))
End Function

' The ponds of the old slab: where water stands once all that can has run off, how deep and how much.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_ft, y_ft, [name]; may be left out
' shallowest_in: ponds shallower than this are left out (in); at least 0 in, at most 12 in; left out: 1/16 in, because a rod hardly tells less
' Gives count (how many ponds), area_ft2 (area under water), volume_ft3 (water in all ponds), depth_in (greatest depth; none without a pond), left_out (how many ponds were shallower), left_out_volume_ft3 (water in those), ponds (the ponds).
Public Function OVS_STANDING_WATER_US(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_STANDING_WATER_US = Called("standing_water", "us", "value", "", Array(survey, edges, drains, shallowest_in))
End Function

Public Function OVS_STANDING_WATER_US_WHY(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_STANDING_WATER_US_WHY = Called("standing_water", "us", "why", "", Array(survey, edges, drains, shallowest_in))
End Function

Public Function OVS_STANDING_WATER_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_STANDING_WATER_US_GET = Called("standing_water", "us", "get", result, Array(survey, edges, drains, shallowest_in))
End Function

' The ponds of the old slab: where water stands once all that can has run off, how deep and how much.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_m, y_m, [name]; may be left out
' shallowest_mm: ponds shallower than this are left out (mm); at least 0 mm, at most 304.8 mm; left out: 1/16 in, because a rod hardly tells less
' Gives count (how many ponds), area_m2 (area under water), volume_m3 (water in all ponds), depth_mm (greatest depth; none without a pond), left_out (how many ponds were shallower), left_out_volume_m3 (water in those), ponds (the ponds).
Public Function OVS_STANDING_WATER_SI(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_STANDING_WATER_SI = Called("standing_water", "si", "value", "", Array(survey, edges, drains, shallowest_mm))
End Function

Public Function OVS_STANDING_WATER_SI_WHY(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_STANDING_WATER_SI_WHY = Called("standing_water", "si", "why", "", Array(survey, edges, drains, shallowest_mm))
End Function

Public Function OVS_STANDING_WATER_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_STANDING_WATER_SI_GET = Called("standing_water", "si", "get", result, Array(survey, edges, drains, shallowest_mm))
End Function

' Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find out.
' findings: what was found, in site words or measures; a range of path, value, unit
' Gives take (the way to take), unbonded (pouring over it, unbonded), bonded (bonding to it), partly_bonded (pouring straight on; only where that is asked for), break_out_part (breaking out the bad parts), break_out_whole (breaking it all out), reasons (the rules that weigh, way by way), work (the work that each way takes), asks (what could turn the verdict and is not known), stops (the stops by name), taken_findings (what was not given and was taken), text (the verdict in plain words, one idea to a line, what can hurt with it).
Public Function OVS_CONDITION_US(ByVal findings As Variant) As Variant
    OVS_CONDITION_US = Called("condition", "us", "value", "", Array(findings))
End Function

Public Function OVS_CONDITION_US_WHY(ByVal findings As Variant) As Variant
    OVS_CONDITION_US_WHY = Called("condition", "us", "why", "", Array(findings))
End Function

Public Function OVS_CONDITION_US_GET(ByVal result As Variant, ByVal findings As Variant) As Variant
    OVS_CONDITION_US_GET = Called("condition", "us", "get", result, Array(findings))
End Function

' Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find out.
' findings: what was found, in site words or measures; a range of path, value, unit
' Gives take (the way to take), unbonded (pouring over it, unbonded), bonded (bonding to it), partly_bonded (pouring straight on; only where that is asked for), break_out_part (breaking out the bad parts), break_out_whole (breaking it all out), reasons (the rules that weigh, way by way), work (the work that each way takes), asks (what could turn the verdict and is not known), stops (the stops by name), taken_findings (what was not given and was taken), text (the verdict in plain words, one idea to a line, what can hurt with it).
Public Function OVS_CONDITION_SI(ByVal findings As Variant) As Variant
    OVS_CONDITION_SI = Called("condition", "si", "value", "", Array(findings))
End Function

Public Function OVS_CONDITION_SI_WHY(ByVal findings As Variant) As Variant
    OVS_CONDITION_SI_WHY = Called("condition", "si", "why", "", Array(findings))
End Function

Public Function OVS_CONDITION_SI_GET(ByVal result As Variant, ByVal findings As Variant) As Variant
    OVS_CONDITION_SI_GET = Called("condition", "si", "get", result, Array(findings))
End Function

' The verdict on the old slab by five questions that a foreman answers standing on it.
' moves: does it move or rock, or has it sunk?; no, sank_once, rocks or moves
' cracks: what cracks are there?; none, hairline_still, wide_or_stepped or many
' hammer: what does the hammer say?; rings, spots or a_lot
' surface: what is the surface like?; clean, oil_or_paint, scaled or covered
' under: what is under it, and does it freeze there?; ground_indoors, ground_outdoors, ground_frost, air or unknown
' findings: what else was found; it goes before the answers; a range of path, value, unit; may be left out
' Gives take (the way to take), unbonded (pouring over it, unbonded), bonded (bonding to it), partly_bonded (pouring straight on; only where that is asked for), break_out_part (breaking out the bad parts), break_out_whole (breaking it all out), reasons (the rules that weigh, way by way), work (the work that each way takes), asks (what could turn the verdict and is not known), stops (the stops by name), taken_findings (what was not given and was taken), text (the verdict in plain words, one idea to a line, what can hurt with it).
Public Function OVS_CONDITION_QUICK_US(ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_US = Called("condition_quick", "us", "value", "", Array(moves, cracks, hammer, surface, under, findings))
End Function

Public Function OVS_CONDITION_QUICK_US_WHY(ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_US_WHY = Called("condition_quick", "us", "why", "", Array(moves, cracks, hammer, surface, under, findings))
End Function

Public Function OVS_CONDITION_QUICK_US_GET(ByVal result As Variant, ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_US_GET = Called("condition_quick", "us", "get", result, Array(moves, cracks, hammer, surface, under, findings))
End Function

' The verdict on the old slab by five questions that a foreman answers standing on it.
' moves: does it move or rock, or has it sunk?; no, sank_once, rocks or moves
' cracks: what cracks are there?; none, hairline_still, wide_or_stepped or many
' hammer: what does the hammer say?; rings, spots or a_lot
' surface: what is the surface like?; clean, oil_or_paint, scaled or covered
' under: what is under it, and does it freeze there?; ground_indoors, ground_outdoors, ground_frost, air or unknown
' findings: what else was found; it goes before the answers; a range of path, value, unit; may be left out
' Gives take (the way to take), unbonded (pouring over it, unbonded), bonded (bonding to it), partly_bonded (pouring straight on; only where that is asked for), break_out_part (breaking out the bad parts), break_out_whole (breaking it all out), reasons (the rules that weigh, way by way), work (the work that each way takes), asks (what could turn the verdict and is not known), stops (the stops by name), taken_findings (what was not given and was taken), text (the verdict in plain words, one idea to a line, what can hurt with it).
Public Function OVS_CONDITION_QUICK_SI(ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_SI = Called("condition_quick", "si", "value", "", Array(moves, cracks, hammer, surface, under, findings))
End Function

Public Function OVS_CONDITION_QUICK_SI_WHY(ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_SI_WHY = Called("condition_quick", "si", "why", "", Array(moves, cracks, hammer, surface, under, findings))
End Function

Public Function OVS_CONDITION_QUICK_SI_GET(ByVal result As Variant, ByVal moves As Variant, ByVal cracks As Variant, ByVal hammer As Variant, ByVal surface As Variant, ByVal under As Variant, Optional ByVal findings As Variant) As Variant
    OVS_CONDITION_QUICK_SI_GET = Called("condition_quick", "si", "get", result, Array(moves, cracks, hammer, surface, under, findings))
End Function

' Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the caller's prices.
' area_ft2: area broken out (ft2); more than 0 ft2, at most 10763910.4167 ft2
' old_thickness_in: thickness of the old slab (in); at least 0.25 in, at most 60 in; left out: 3 1/2 in, because a nominal 4 in is 3 1/2 in
' density_lb_per_ft3: mass of the old concrete in place (lb/ft3); at least 62.4279605761 lb/ft3, at most 249.711842305 lb/ft3; left out: 150 lb/ft3, because 4,050 lb/yd3 in place
' bulking_percent: volume broken up over volume in place (%); at least 100 %, at most 300 %; left out: 150 %, because broken concrete takes 1.4 to 1.6 times its room
' box_weight_ton: what one box or truck may carry (ton); at least 0.110231131092 ton, at most 55.1155655462 ton; left out: 10 ton, because a box of 10 tons
' box_volume_yd3: what goes into one box, where that runs out first (yd3); at least 0.130795061931 yd3, at most 130.795061931 yd3; may be left out
' base_in: thickness of the new base, compacted; none where the ground serves (in); more than 0 in, at most 120 in; may be left out
' base_loose_percent: volume of base as bought over compacted (%); at least 100 %, at most 300 %; left out: 120 %, because base loses a sixth when it is compacted
' new_thickness_in: mean thickness of the new slab; none where nothing is poured (in); at least 0.25 in, at most 60 in; may be left out
' rise_in: how much higher the new floor is than the old one, on the mean (in); at least -60 in, at most 60 in; left out: 0 in, because the new floor is as high as the old one
' breaking_price_per_ft2: price of breaking and loading (/ft2); at least 0 /ft2, at most 92903040 /ft2; may be left out
' load_price_money: price of hauling one load (money); at least 0 money, at most 1000000000 money; may be left out
' dump_price_per_ton: price of dumping (/ton); at least 0 /ton, at most 907184740000 /ton; may be left out
' base_price_per_yd3: price of base as bought (/yd3); at least 0 /yd3, at most 764554857.984 /yd3; may be left out
' concrete_price_per_yd3: price of concrete, placed (/yd3); at least 0 /yd3, at most 764554857.984 /yd3; may be left out
' Gives in_place_yd3 (old concrete in place), mass_ton (its mass), loose_yd3 (its volume broken up), loads (loads to the dump, by weight or by volume), dig_depth_in (how deep the ground is dug below the old slab), dig_yd3 (ground dug, in place; it is not in the loads), base_in_place_yd3 (new base, compacted), base_bought_yd3 (new base, loose, as it is bought), concrete_yd3 (the new slab; none where nothing is poured), costs (the cost of each part that there is), total_money (all of it; none where a price is missing).
Public Function OVS_TEAR_OUT_US(ByVal area_ft2 As Variant, Optional ByVal old_thickness_in As Variant, Optional ByVal density_lb_per_ft3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_ton As Variant, Optional ByVal box_volume_yd3 As Variant, Optional ByVal base_in As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal rise_in As Variant, Optional ByVal breaking_price_per_ft2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_ton As Variant, Optional ByVal base_price_per_yd3 As Variant, Optional ByVal concrete_price_per_yd3 As Variant) As Variant
    OVS_TEAR_OUT_US = Called("tear_out", "us", "value", "", Array(area_ft2, old_thickness_in, density_lb_per_ft3, bulking_percent, box_weight_ton, box_volume_yd3, base_in, base_loose_percent, new_thickness_in, rise_in, breaking_price_per_ft2, load_price_money, dump_price_per_ton, base_price_per_yd3, concrete_price_per_yd3))
End Function

Public Function OVS_TEAR_OUT_US_WHY(ByVal area_ft2 As Variant, Optional ByVal old_thickness_in As Variant, Optional ByVal density_lb_per_ft3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_ton As Variant, Optional ByVal box_volume_yd3 As Variant, Optional ByVal base_in As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal rise_in As Variant, Optional ByVal breaking_price_per_ft2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_ton As Variant, Optional ByVal base_price_per_yd3 As Variant, Optional ByVal concrete_price_per_yd3 As Variant) As Variant
    OVS_TEAR_OUT_US_WHY = Called("tear_out", "us", "why", "", Array(area_ft2, old_thickness_in, density_lb_per_ft3, bulking_percent, box_weight_ton, box_volume_yd3, base_in, base_loose_percent, new_thickness_in, rise_in, breaking_price_per_ft2, load_price_money, dump_price_per_ton, base_price_per_yd3, concrete_price_per_yd3))
End Function

Public Function OVS_TEAR_OUT_US_GET(ByVal result As Variant, ByVal area_ft2 As Variant, Optional ByVal old_thickness_in As Variant, Optional ByVal density_lb_per_ft3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_ton As Variant, Optional ByVal box_volume_yd3 As Variant, Optional ByVal base_in As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal rise_in As Variant, Optional ByVal breaking_price_per_ft2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_ton As Variant, Optional ByVal base_price_per_yd3 As Variant, Optional ByVal concrete_price_per_yd3 As Variant) As Variant
    OVS_TEAR_OUT_US_GET = Called("tear_out", "us", "get", result, Array(area_ft2, old_thickness_in, density_lb_per_ft3, bulking_percent, box_weight_ton, box_volume_yd3, base_in, base_loose_percent, new_thickness_in, rise_in, breaking_price_per_ft2, load_price_money, dump_price_per_ton, base_price_per_yd3, concrete_price_per_yd3))
End Function

' Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the caller's prices.
' area_m2: area broken out (m2); more than 0 m2, at most 1000000 m2
' old_thickness_mm: thickness of the old slab (mm); at least 6.35 mm, at most 1524 mm; left out: 3 1/2 in, because a nominal 4 in is 3 1/2 in
' density_kg_per_m3: mass of the old concrete in place (kg/m3); at least 1000 kg/m3, at most 4000 kg/m3; left out: 150 lb/ft3, because 4,050 lb/yd3 in place
' bulking_percent: volume broken up over volume in place (%); at least 100 %, at most 300 %; left out: 150 %, because broken concrete takes 1.4 to 1.6 times its room
' box_weight_t: what one box or truck may carry (t); at least 0.1 t, at most 50 t; left out: 10 ton, because a box of 10 tons
' box_volume_m3: what goes into one box, where that runs out first (m3); at least 0.1 m3, at most 100 m3; may be left out
' base_mm: thickness of the new base, compacted; none where the ground serves (mm); more than 0 mm, at most 3048 mm; may be left out
' base_loose_percent: volume of base as bought over compacted (%); at least 100 %, at most 300 %; left out: 120 %, because base loses a sixth when it is compacted
' new_thickness_mm: mean thickness of the new slab; none where nothing is poured (mm); at least 6.35 mm, at most 1524 mm; may be left out
' rise_mm: how much higher the new floor is than the old one, on the mean (mm); at least -1524 mm, at most 1524 mm; left out: 0 in, because the new floor is as high as the old one
' breaking_price_per_m2: price of breaking and loading (/m2); at least 0 /m2, at most 1000000000 /m2; may be left out
' load_price_money: price of hauling one load (money); at least 0 money, at most 1000000000 money; may be left out
' dump_price_per_t: price of dumping (/t); at least 0 /t, at most 1000000000000 /t; may be left out
' base_price_per_m3: price of base as bought (/m3); at least 0 /m3, at most 1000000000 /m3; may be left out
' concrete_price_per_m3: price of concrete, placed (/m3); at least 0 /m3, at most 1000000000 /m3; may be left out
' Gives in_place_m3 (old concrete in place), mass_t (its mass), loose_m3 (its volume broken up), loads (loads to the dump, by weight or by volume), dig_depth_mm (how deep the ground is dug below the old slab), dig_m3 (ground dug, in place; it is not in the loads), base_in_place_m3 (new base, compacted), base_bought_m3 (new base, loose, as it is bought), concrete_m3 (the new slab; none where nothing is poured), costs (the cost of each part that there is), total_money (all of it; none where a price is missing).
Public Function OVS_TEAR_OUT_SI(ByVal area_m2 As Variant, Optional ByVal old_thickness_mm As Variant, Optional ByVal density_kg_per_m3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_t As Variant, Optional ByVal box_volume_m3 As Variant, Optional ByVal base_mm As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal rise_mm As Variant, Optional ByVal breaking_price_per_m2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_t As Variant, Optional ByVal base_price_per_m3 As Variant, Optional ByVal concrete_price_per_m3 As Variant) As Variant
    OVS_TEAR_OUT_SI = Called("tear_out", "si", "value", "", Array(area_m2, old_thickness_mm, density_kg_per_m3, bulking_percent, box_weight_t, box_volume_m3, base_mm, base_loose_percent, new_thickness_mm, rise_mm, breaking_price_per_m2, load_price_money, dump_price_per_t, base_price_per_m3, concrete_price_per_m3))
End Function

Public Function OVS_TEAR_OUT_SI_WHY(ByVal area_m2 As Variant, Optional ByVal old_thickness_mm As Variant, Optional ByVal density_kg_per_m3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_t As Variant, Optional ByVal box_volume_m3 As Variant, Optional ByVal base_mm As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal rise_mm As Variant, Optional ByVal breaking_price_per_m2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_t As Variant, Optional ByVal base_price_per_m3 As Variant, Optional ByVal concrete_price_per_m3 As Variant) As Variant
    OVS_TEAR_OUT_SI_WHY = Called("tear_out", "si", "why", "", Array(area_m2, old_thickness_mm, density_kg_per_m3, bulking_percent, box_weight_t, box_volume_m3, base_mm, base_loose_percent, new_thickness_mm, rise_mm, breaking_price_per_m2, load_price_money, dump_price_per_t, base_price_per_m3, concrete_price_per_m3))
End Function

Public Function OVS_TEAR_OUT_SI_GET(ByVal result As Variant, ByVal area_m2 As Variant, Optional ByVal old_thickness_mm As Variant, Optional ByVal density_kg_per_m3 As Variant, Optional ByVal bulking_percent As Variant, Optional ByVal box_weight_t As Variant, Optional ByVal box_volume_m3 As Variant, Optional ByVal base_mm As Variant, Optional ByVal base_loose_percent As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal rise_mm As Variant, Optional ByVal breaking_price_per_m2 As Variant, Optional ByVal load_price_money As Variant, Optional ByVal dump_price_per_t As Variant, Optional ByVal base_price_per_m3 As Variant, Optional ByVal concrete_price_per_m3 As Variant) As Variant
    OVS_TEAR_OUT_SI_GET = Called("tear_out", "si", "get", result, Array(area_m2, old_thickness_mm, density_kg_per_m3, bulking_percent, box_weight_t, box_volume_m3, base_mm, base_loose_percent, new_thickness_mm, rise_mm, breaking_price_per_m2, load_price_money, dump_price_per_t, base_price_per_m3, concrete_price_per_m3))
End Function

' The fall of a surface that loses a height over a run.
' drop_in: height lost (in); at least 0 in, at most 1200 in
' run_ft: level distance over which it is lost (ft); more than 0 ft, at most 10000 ft
' Gives fall_in_per_ft (fall of the surface).
Public Function OVS_FALL_US(ByVal drop_in As Variant, ByVal run_ft As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(drop_in, run_ft), "dd", x) Then
        status = dll_fall_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_FALL_US = y1 Else OVS_FALL_US = ErrorFor(status)
        Exit Function
    End If
    OVS_FALL_US = Called("fall", "us", "value", "", Array(drop_in, run_ft))
End Function

Public Function OVS_FALL_US_WHY(ByVal drop_in As Variant, ByVal run_ft As Variant) As Variant
    OVS_FALL_US_WHY = Called("fall", "us", "why", "", Array(drop_in, run_ft))
End Function

Public Function OVS_FALL_US_GET(ByVal result As Variant, ByVal drop_in As Variant, ByVal run_ft As Variant) As Variant
    OVS_FALL_US_GET = Called("fall", "us", "get", result, Array(drop_in, run_ft))
End Function

' The fall of a surface that loses a height over a run.
' drop_mm: height lost (mm); at least 0 mm, at most 30480 mm
' run_m: level distance over which it is lost (m); more than 0 m, at most 3048 m
' Gives fall_percent (fall of the surface).
Public Function OVS_FALL_SI(ByVal drop_mm As Variant, ByVal run_m As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(drop_mm, run_m), "dd", x) Then
        status = dll_fall_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_FALL_SI = y1 Else OVS_FALL_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_FALL_SI = Called("fall", "si", "value", "", Array(drop_mm, run_m))
End Function

Public Function OVS_FALL_SI_WHY(ByVal drop_mm As Variant, ByVal run_m As Variant) As Variant
    OVS_FALL_SI_WHY = Called("fall", "si", "why", "", Array(drop_mm, run_m))
End Function

Public Function OVS_FALL_SI_GET(ByVal result As Variant, ByVal drop_mm As Variant, ByVal run_m As Variant) As Variant
    OVS_FALL_SI_GET = Called("fall", "si", "get", result, Array(drop_mm, run_m))
End Function

' The height that a surface loses over a run at a fall.
' fall_in_per_ft: fall of the surface (in/ft); at least 0 in/ft, at most 12 in/ft
' run_ft: level distance (ft); more than 0 ft, at most 10000 ft
' Gives drop_in (height lost).
Public Function OVS_DROP_US(ByVal fall_in_per_ft As Variant, ByVal run_ft As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(fall_in_per_ft, run_ft), "dd", x) Then
        status = dll_drop_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_DROP_US = y1 Else OVS_DROP_US = ErrorFor(status)
        Exit Function
    End If
    OVS_DROP_US = Called("drop", "us", "value", "", Array(fall_in_per_ft, run_ft))
End Function

Public Function OVS_DROP_US_WHY(ByVal fall_in_per_ft As Variant, ByVal run_ft As Variant) As Variant
    OVS_DROP_US_WHY = Called("drop", "us", "why", "", Array(fall_in_per_ft, run_ft))
End Function

Public Function OVS_DROP_US_GET(ByVal result As Variant, ByVal fall_in_per_ft As Variant, ByVal run_ft As Variant) As Variant
    OVS_DROP_US_GET = Called("drop", "us", "get", result, Array(fall_in_per_ft, run_ft))
End Function

' The height that a surface loses over a run at a fall.
' fall_percent: fall of the surface (%); at least 0 %, at most 100 %
' run_m: level distance (m); more than 0 m, at most 3048 m
' Gives drop_mm (height lost).
Public Function OVS_DROP_SI(ByVal fall_percent As Variant, ByVal run_m As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(fall_percent, run_m), "dd", x) Then
        status = dll_drop_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_DROP_SI = y1 Else OVS_DROP_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_DROP_SI = Called("drop", "si", "value", "", Array(fall_percent, run_m))
End Function

Public Function OVS_DROP_SI_WHY(ByVal fall_percent As Variant, ByVal run_m As Variant) As Variant
    OVS_DROP_SI_WHY = Called("drop", "si", "why", "", Array(fall_percent, run_m))
End Function

Public Function OVS_DROP_SI_GET(ByVal result As Variant, ByVal fall_percent As Variant, ByVal run_m As Variant) As Variant
    OVS_DROP_SI_GET = Called("drop", "si", "get", result, Array(fall_percent, run_m))
End Function

' The volume between old slab and finish over one triangle, split where they meet.
' area_ft2: plan area of the triangle (ft2); more than 0 ft2, at most 10763910.4167 ft2
' thickness_1_in: thickness at the first corner (in); at least -3937.00787402 in, at most 3937.00787402 in
' thickness_2_in: thickness at the second corner (in); at least -3937.00787402 in, at most 3937.00787402 in
' thickness_3_in: thickness at the third corner (in); at least -3937.00787402 in, at most 3937.00787402 in
' Gives net_ft3 (fill less high spots), fill_ft3 (fill above the old slab), high_ft3 (old slab above the finish).
Public Function OVS_TRIANGULAR_PRISM_US(ByVal area_ft2 As Variant, ByVal thickness_1_in As Variant, ByVal thickness_2_in As Variant, ByVal thickness_3_in As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(area_ft2, thickness_1_in, thickness_2_in, thickness_3_in), "dddd", x) Then
        status = dll_triangular_prism_us(x(0), x(1), x(2), x(3), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_TRIANGULAR_PRISM_US = SideBySide(Array(y1, y2, y3)) Else OVS_TRIANGULAR_PRISM_US = ErrorFor(status)
        Exit Function
    End If
    OVS_TRIANGULAR_PRISM_US = Called("triangular_prism", "us", "value", "", Array(area_ft2, thickness_1_in, thickness_2_in, thickness_3_in))
End Function

Public Function OVS_TRIANGULAR_PRISM_US_WHY(ByVal area_ft2 As Variant, ByVal thickness_1_in As Variant, ByVal thickness_2_in As Variant, ByVal thickness_3_in As Variant) As Variant
    OVS_TRIANGULAR_PRISM_US_WHY = Called("triangular_prism", "us", "why", "", Array(area_ft2, thickness_1_in, thickness_2_in, thickness_3_in))
End Function

Public Function OVS_TRIANGULAR_PRISM_US_GET(ByVal result As Variant, ByVal area_ft2 As Variant, ByVal thickness_1_in As Variant, ByVal thickness_2_in As Variant, ByVal thickness_3_in As Variant) As Variant
    OVS_TRIANGULAR_PRISM_US_GET = Called("triangular_prism", "us", "get", result, Array(area_ft2, thickness_1_in, thickness_2_in, thickness_3_in))
End Function

' The volume between old slab and finish over one triangle, split where they meet.
' area_m2: plan area of the triangle (m2); more than 0 m2, at most 1000000 m2
' thickness_1_mm: thickness at the first corner (mm); at least -100000 mm, at most 100000 mm
' thickness_2_mm: thickness at the second corner (mm); at least -100000 mm, at most 100000 mm
' thickness_3_mm: thickness at the third corner (mm); at least -100000 mm, at most 100000 mm
' Gives net_m3 (fill less high spots), fill_m3 (fill above the old slab), high_m3 (old slab above the finish).
Public Function OVS_TRIANGULAR_PRISM_SI(ByVal area_m2 As Variant, ByVal thickness_1_mm As Variant, ByVal thickness_2_mm As Variant, ByVal thickness_3_mm As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm), "dddd", x) Then
        status = dll_triangular_prism_si(x(0), x(1), x(2), x(3), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_TRIANGULAR_PRISM_SI = SideBySide(Array(y1, y2, y3)) Else OVS_TRIANGULAR_PRISM_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_TRIANGULAR_PRISM_SI = Called("triangular_prism", "si", "value", "", Array(area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm))
End Function

Public Function OVS_TRIANGULAR_PRISM_SI_WHY(ByVal area_m2 As Variant, ByVal thickness_1_mm As Variant, ByVal thickness_2_mm As Variant, ByVal thickness_3_mm As Variant) As Variant
    OVS_TRIANGULAR_PRISM_SI_WHY = Called("triangular_prism", "si", "why", "", Array(area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm))
End Function

Public Function OVS_TRIANGULAR_PRISM_SI_GET(ByVal result As Variant, ByVal area_m2 As Variant, ByVal thickness_1_mm As Variant, ByVal thickness_2_mm As Variant, ByVal thickness_3_mm As Variant) As Variant
    OVS_TRIANGULAR_PRISM_SI_GET = Called("triangular_prism", "si", "get", result, Array(area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm))
End Function

' A level finish.
' elevation_ft: its elevation (ft); at least -32808.3989501 ft, at most 32808.3989501 ft
' Gives finish (the finish).
Public Function OVS_FINISH_LEVEL_US(ByVal elevation_ft As Variant) As Variant
    OVS_FINISH_LEVEL_US = Called("finish_level", "us", "value", "", Array(elevation_ft))
End Function

Public Function OVS_FINISH_LEVEL_US_WHY(ByVal elevation_ft As Variant) As Variant
    OVS_FINISH_LEVEL_US_WHY = Called("finish_level", "us", "why", "", Array(elevation_ft))
End Function

Public Function OVS_FINISH_LEVEL_US_GET(ByVal result As Variant, ByVal elevation_ft As Variant) As Variant
    OVS_FINISH_LEVEL_US_GET = Called("finish_level", "us", "get", result, Array(elevation_ft))
End Function

' A level finish.
' elevation_m: its elevation (m); at least -10000 m, at most 10000 m
' Gives finish (the finish).
Public Function OVS_FINISH_LEVEL_SI(ByVal elevation_m As Variant) As Variant
    OVS_FINISH_LEVEL_SI = Called("finish_level", "si", "value", "", Array(elevation_m))
End Function

Public Function OVS_FINISH_LEVEL_SI_WHY(ByVal elevation_m As Variant) As Variant
    OVS_FINISH_LEVEL_SI_WHY = Called("finish_level", "si", "why", "", Array(elevation_m))
End Function

Public Function OVS_FINISH_LEVEL_SI_GET(ByVal result As Variant, ByVal elevation_m As Variant) As Variant
    OVS_FINISH_LEVEL_SI_GET = Called("finish_level", "si", "get", result, Array(elevation_m))
End Function

' The plane finish through three points.
' points: three points that are not on one line; a range with the columns x_ft, y_ft, elevation_ft
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_POINTS_US(ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_US = Called("finish_from_points", "us", "value", "", Array(points))
End Function

Public Function OVS_FINISH_FROM_POINTS_US_WHY(ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_US_WHY = Called("finish_from_points", "us", "why", "", Array(points))
End Function

Public Function OVS_FINISH_FROM_POINTS_US_GET(ByVal result As Variant, ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_US_GET = Called("finish_from_points", "us", "get", result, Array(points))
End Function

' The plane finish through three points.
' points: three points that are not on one line; a range with the columns x_m, y_m, elevation_m
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_POINTS_SI(ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_SI = Called("finish_from_points", "si", "value", "", Array(points))
End Function

Public Function OVS_FINISH_FROM_POINTS_SI_WHY(ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_SI_WHY = Called("finish_from_points", "si", "why", "", Array(points))
End Function

Public Function OVS_FINISH_FROM_POINTS_SI_GET(ByVal result As Variant, ByVal points As Variant) As Variant
    OVS_FINISH_FROM_POINTS_SI_GET = Called("finish_from_points", "si", "get", result, Array(points))
End Function

' The plane finish that stands level along an edge and falls square to it.
' survey: the old slab with the edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' edge: name of the edge; a text
' elevation_ft: height of the finish at the edge (ft); at least -32808.3989501 ft, at most 32808.3989501 ft
' fall_in_per_ft: fall towards the edge (in/ft); at least 0 in/ft, at most 12 in/ft
' Gives finish (the finish).
Public Function OVS_FINISH_TO_EDGE_US(ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_EDGE_US = Called("finish_to_edge", "us", "value", "", Array(survey, edge, elevation_ft, fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_EDGE_US_WHY(ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_EDGE_US_WHY = Called("finish_to_edge", "us", "why", "", Array(survey, edge, elevation_ft, fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_EDGE_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_EDGE_US_GET = Called("finish_to_edge", "us", "get", result, Array(survey, edge, elevation_ft, fall_in_per_ft))
End Function

' The plane finish that stands level along an edge and falls square to it.
' survey: the old slab with the edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' edge: name of the edge; a text
' elevation_m: height of the finish at the edge (m); at least -10000 m, at most 10000 m
' fall_percent: fall towards the edge (%); at least 0 %, at most 100 %
' Gives finish (the finish).
Public Function OVS_FINISH_TO_EDGE_SI(ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_m As Variant, ByVal fall_percent As Variant) As Variant
    OVS_FINISH_TO_EDGE_SI = Called("finish_to_edge", "si", "value", "", Array(survey, edge, elevation_m, fall_percent))
End Function

Public Function OVS_FINISH_TO_EDGE_SI_WHY(ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_m As Variant, ByVal fall_percent As Variant) As Variant
    OVS_FINISH_TO_EDGE_SI_WHY = Called("finish_to_edge", "si", "why", "", Array(survey, edge, elevation_m, fall_percent))
End Function

Public Function OVS_FINISH_TO_EDGE_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal edge As Variant, ByVal elevation_m As Variant, ByVal fall_percent As Variant) As Variant
    OVS_FINISH_TO_EDGE_SI_GET = Called("finish_to_edge", "si", "get", result, Array(survey, edge, elevation_m, fall_percent))
End Function

' The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' least_in: least thickness (in); at least 0 in, at most 120 in
' edge: the edge it falls to; none for a level finish; a text; may be left out
' fall_in_per_ft: fall towards the edge (in/ft); at least 0 in/ft, at most 12 in/ft; left out: 1/8 in/ft, because the least for a well-finished floor
' round_in: heights are rounded up to whole steps of this (in); at least 0 in, at most 12 in; may be left out
' datum_ft: the height the steps are counted from, usually the benchmark (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; left out: 0 ft, because the job datum
' margin_in: margin on the least thickness (in); at least 0 in, at most 120 in; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_AT_LEAST_US(ByVal survey As Variant, ByVal least_in As Variant, Optional ByVal edge As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal margin_in As Variant) As Variant
    OVS_FINISH_AT_LEAST_US = Called("finish_at_least", "us", "value", "", Array(survey, least_in, edge, fall_in_per_ft, round_in, datum_ft, margin_in))
End Function

Public Function OVS_FINISH_AT_LEAST_US_WHY(ByVal survey As Variant, ByVal least_in As Variant, Optional ByVal edge As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal margin_in As Variant) As Variant
    OVS_FINISH_AT_LEAST_US_WHY = Called("finish_at_least", "us", "why", "", Array(survey, least_in, edge, fall_in_per_ft, round_in, datum_ft, margin_in))
End Function

Public Function OVS_FINISH_AT_LEAST_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal least_in As Variant, Optional ByVal edge As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal margin_in As Variant) As Variant
    OVS_FINISH_AT_LEAST_US_GET = Called("finish_at_least", "us", "get", result, Array(survey, least_in, edge, fall_in_per_ft, round_in, datum_ft, margin_in))
End Function

' The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' least_mm: least thickness (mm); at least 0 mm, at most 3048 mm
' edge: the edge it falls to; none for a level finish; a text; may be left out
' fall_percent: fall towards the edge (%); at least 0 %, at most 100 %; left out: 1/8 in/ft, because the least for a well-finished floor
' round_mm: heights are rounded up to whole steps of this (mm); at least 0 mm, at most 304.8 mm; may be left out
' datum_m: the height the steps are counted from, usually the benchmark (m); at least -10000 m, at most 10000 m; left out: 0 ft, because the job datum
' margin_mm: margin on the least thickness (mm); at least 0 mm, at most 3048 mm; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_AT_LEAST_SI(ByVal survey As Variant, ByVal least_mm As Variant, Optional ByVal edge As Variant, Optional ByVal fall_percent As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal margin_mm As Variant) As Variant
    OVS_FINISH_AT_LEAST_SI = Called("finish_at_least", "si", "value", "", Array(survey, least_mm, edge, fall_percent, round_mm, datum_m, margin_mm))
End Function

Public Function OVS_FINISH_AT_LEAST_SI_WHY(ByVal survey As Variant, ByVal least_mm As Variant, Optional ByVal edge As Variant, Optional ByVal fall_percent As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal margin_mm As Variant) As Variant
    OVS_FINISH_AT_LEAST_SI_WHY = Called("finish_at_least", "si", "why", "", Array(survey, least_mm, edge, fall_percent, round_mm, datum_m, margin_mm))
End Function

Public Function OVS_FINISH_AT_LEAST_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal least_mm As Variant, Optional ByVal edge As Variant, Optional ByVal fall_percent As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal margin_mm As Variant) As Variant
    OVS_FINISH_AT_LEAST_SI_GET = Called("finish_at_least", "si", "get", result, Array(survey, least_mm, edge, fall_percent, round_mm, datum_m, margin_mm))
End Function

' A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
' corners: the corners; a range with the columns [name], x_ft, y_ft, elevation_ft
' facets: the facets; a range with the columns corners, [name], [falls_to]
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_FACETS_US(ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_US = Called("finish_from_facets", "us", "value", "", Array(corners, facets))
End Function

Public Function OVS_FINISH_FROM_FACETS_US_WHY(ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_US_WHY = Called("finish_from_facets", "us", "why", "", Array(corners, facets))
End Function

Public Function OVS_FINISH_FROM_FACETS_US_GET(ByVal result As Variant, ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_US_GET = Called("finish_from_facets", "us", "get", result, Array(corners, facets))
End Function

' A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
' corners: the corners; a range with the columns [name], x_m, y_m, elevation_m
' facets: the facets; a range with the columns corners, [name], [falls_to]
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_FACETS_SI(ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_SI = Called("finish_from_facets", "si", "value", "", Array(corners, facets))
End Function

Public Function OVS_FINISH_FROM_FACETS_SI_WHY(ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_SI_WHY = Called("finish_from_facets", "si", "why", "", Array(corners, facets))
End Function

Public Function OVS_FINISH_FROM_FACETS_SI_GET(ByVal result As Variant, ByVal corners As Variant, ByVal facets As Variant) As Variant
    OVS_FINISH_FROM_FACETS_SI_GET = Called("finish_from_facets", "si", "get", result, Array(corners, facets))
End Function

' A finish of several facets, each with the plane through three heights of its own, checked to meet.
' corners: the corners of all facets; a range with the columns facet, x_ft, y_ft, [elevation_ft]
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_PLANES_US(ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_US = Called("finish_from_planes", "us", "value", "", Array(corners))
End Function

Public Function OVS_FINISH_FROM_PLANES_US_WHY(ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_US_WHY = Called("finish_from_planes", "us", "why", "", Array(corners))
End Function

Public Function OVS_FINISH_FROM_PLANES_US_GET(ByVal result As Variant, ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_US_GET = Called("finish_from_planes", "us", "get", result, Array(corners))
End Function

' A finish of several facets, each with the plane through three heights of its own, checked to meet.
' corners: the corners of all facets; a range with the columns facet, x_m, y_m, [elevation_m]
' Gives finish (the finish).
Public Function OVS_FINISH_FROM_PLANES_SI(ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_SI = Called("finish_from_planes", "si", "value", "", Array(corners))
End Function

Public Function OVS_FINISH_FROM_PLANES_SI_WHY(ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_SI_WHY = Called("finish_from_planes", "si", "why", "", Array(corners))
End Function

Public Function OVS_FINISH_FROM_PLANES_SI_GET(ByVal result As Variant, ByVal corners As Variant) As Variant
    OVS_FINISH_FROM_PLANES_SI_GET = Called("finish_from_planes", "si", "get", result, Array(corners))
End Function

' Two planes that fall to a valley across the work; the valley may fall along its length.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' valley: two points of the valley; a range with the columns x_ft, y_ft, elevation_ft
' fall_in_per_ft: fall to the valley, square to it (in/ft); at least 0 in/ft, at most 12 in/ft
' right_fall_in_per_ft: fall on the right, where it is another (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_VALLEY_US(ByVal survey As Variant, ByVal valley As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_VALLEY_US = Called("finish_to_valley", "us", "value", "", Array(survey, valley, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_VALLEY_US_WHY(ByVal survey As Variant, ByVal valley As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_VALLEY_US_WHY = Called("finish_to_valley", "us", "why", "", Array(survey, valley, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_VALLEY_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal valley As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_VALLEY_US_GET = Called("finish_to_valley", "us", "get", result, Array(survey, valley, fall_in_per_ft, right_fall_in_per_ft))
End Function

' Two planes that fall to a valley across the work; the valley may fall along its length.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' valley: two points of the valley; a range with the columns x_m, y_m, elevation_m
' fall_percent: fall to the valley, square to it (%); at least 0 %, at most 100 %
' right_fall_percent: fall on the right, where it is another (%); at least 0 %, at most 100 %; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_VALLEY_SI(ByVal survey As Variant, ByVal valley As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_VALLEY_SI = Called("finish_to_valley", "si", "value", "", Array(survey, valley, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_TO_VALLEY_SI_WHY(ByVal survey As Variant, ByVal valley As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_VALLEY_SI_WHY = Called("finish_to_valley", "si", "why", "", Array(survey, valley, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_TO_VALLEY_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal valley As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_VALLEY_SI_GET = Called("finish_to_valley", "si", "get", result, Array(survey, valley, fall_percent, right_fall_percent))
End Function

' A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' ridge: two points of the ridge; a range with the columns x_ft, y_ft, elevation_ft
' fall_in_per_ft: fall away from the ridge, square to it (in/ft); at least 0 in/ft, at most 12 in/ft
' right_fall_in_per_ft: fall on the right, where it is another (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_CROWN_US(ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_CROWN_US = Called("finish_crown", "us", "value", "", Array(survey, ridge, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_CROWN_US_WHY(ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_CROWN_US_WHY = Called("finish_crown", "us", "why", "", Array(survey, ridge, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_CROWN_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_CROWN_US_GET = Called("finish_crown", "us", "get", result, Array(survey, ridge, fall_in_per_ft, right_fall_in_per_ft))
End Function

' A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' ridge: two points of the ridge; a range with the columns x_m, y_m, elevation_m
' fall_percent: fall away from the ridge, square to it (%); at least 0 %, at most 100 %
' right_fall_percent: fall on the right, where it is another (%); at least 0 %, at most 100 %; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_CROWN_SI(ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_CROWN_SI = Called("finish_crown", "si", "value", "", Array(survey, ridge, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_CROWN_SI_WHY(ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_CROWN_SI_WHY = Called("finish_crown", "si", "why", "", Array(survey, ridge, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_CROWN_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal ridge As Variant, ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_CROWN_SI_GET = Called("finish_crown", "si", "get", result, Array(survey, ridge, fall_percent, right_fall_percent))
End Function

' Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' trench: two points of the middle of the trench, at the height of its rims; a range with the columns x_ft, y_ft, elevation_ft; may be left out
' edge: in place of the points: the edge the trench lies along; a text; may be left out
' elevation_ft: along an edge: height of the rims where it starts (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' elevation_end_ft: along an edge: height of the rims where it ends, where the trench is not level (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' width_in: width from rim to rim (in); at least 0 in, at most 1200 in; left out: 0 in, because a slot
' fall_in_per_ft: fall to the trench, square to it (in/ft); at least 0 in/ft, at most 12 in/ft
' right_fall_in_per_ft: fall on the right, where it is another (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_TRENCH_US(ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_ft As Variant, Optional ByVal elevation_end_ft As Variant, Optional ByVal width_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_TRENCH_US = Called("finish_to_trench", "us", "value", "", Array(survey, trench, edge, elevation_ft, elevation_end_ft, width_in, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_TRENCH_US_WHY(ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_ft As Variant, Optional ByVal elevation_end_ft As Variant, Optional ByVal width_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_TRENCH_US_WHY = Called("finish_to_trench", "us", "why", "", Array(survey, trench, edge, elevation_ft, elevation_end_ft, width_in, fall_in_per_ft, right_fall_in_per_ft))
End Function

Public Function OVS_FINISH_TO_TRENCH_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_ft As Variant, Optional ByVal elevation_end_ft As Variant, Optional ByVal width_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal right_fall_in_per_ft As Variant) As Variant
    OVS_FINISH_TO_TRENCH_US_GET = Called("finish_to_trench", "us", "get", result, Array(survey, trench, edge, elevation_ft, elevation_end_ft, width_in, fall_in_per_ft, right_fall_in_per_ft))
End Function

' Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' trench: two points of the middle of the trench, at the height of its rims; a range with the columns x_m, y_m, elevation_m; may be left out
' edge: in place of the points: the edge the trench lies along; a text; may be left out
' elevation_m: along an edge: height of the rims where it starts (m); at least -10000 m, at most 10000 m; may be left out
' elevation_end_m: along an edge: height of the rims where it ends, where the trench is not level (m); at least -10000 m, at most 10000 m; may be left out
' width_mm: width from rim to rim (mm); at least 0 mm, at most 30480 mm; left out: 0 in, because a slot
' fall_percent: fall to the trench, square to it (%); at least 0 %, at most 100 %
' right_fall_percent: fall on the right, where it is another (%); at least 0 %, at most 100 %; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_TRENCH_SI(ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_m As Variant, Optional ByVal elevation_end_m As Variant, Optional ByVal width_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_TRENCH_SI = Called("finish_to_trench", "si", "value", "", Array(survey, trench, edge, elevation_m, elevation_end_m, width_mm, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_TO_TRENCH_SI_WHY(ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_m As Variant, Optional ByVal elevation_end_m As Variant, Optional ByVal width_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_TRENCH_SI_WHY = Called("finish_to_trench", "si", "why", "", Array(survey, trench, edge, elevation_m, elevation_end_m, width_mm, fall_percent, right_fall_percent))
End Function

Public Function OVS_FINISH_TO_TRENCH_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal trench As Variant, Optional ByVal edge As Variant, Optional ByVal elevation_m As Variant, Optional ByVal elevation_end_m As Variant, Optional ByVal width_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal right_fall_percent As Variant) As Variant
    OVS_FINISH_TO_TRENCH_SI_GET = Called("finish_to_trench", "si", "get", result, Array(survey, trench, edge, elevation_m, elevation_end_m, width_mm, fall_percent, right_fall_percent))
End Function

' Planes that fall from a level perimeter to an area drain, one from each run of the outline.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' x_ft: middle of the drain, from the left (ft); any finite number
' y_ft: middle of the drain, from the front (ft); any finite number
' elevation_ft: height of the finish all along the outer edges (ft); at least -32808.3989501 ft, at most 32808.3989501 ft
' drain_elevation_ft: height of the drain (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' fall_in_per_ft: fall to the drain, in place of its height (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' along: the way the fall is meant along: from the farthest corner or from the nearest place; longest or shortest; left out: longest, because the fall is then met everywhere
' rim_x_in: size of the drain's level rim along x; none for a point (in); at least 0 in, at most 1200 in; may be left out
' rim_y_in: its size along y, where it is not square (in); at least 0 in, at most 1200 in; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_DRAIN_US(ByVal survey As Variant, ByVal x_ft As Variant, ByVal y_ft As Variant, ByVal elevation_ft As Variant, Optional ByVal drain_elevation_ft As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_in As Variant, Optional ByVal rim_y_in As Variant) As Variant
    OVS_FINISH_TO_DRAIN_US = Called("finish_to_drain", "us", "value", "", Array(survey, x_ft, y_ft, elevation_ft, drain_elevation_ft, fall_in_per_ft, along, rim_x_in, rim_y_in))
End Function

Public Function OVS_FINISH_TO_DRAIN_US_WHY(ByVal survey As Variant, ByVal x_ft As Variant, ByVal y_ft As Variant, ByVal elevation_ft As Variant, Optional ByVal drain_elevation_ft As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_in As Variant, Optional ByVal rim_y_in As Variant) As Variant
    OVS_FINISH_TO_DRAIN_US_WHY = Called("finish_to_drain", "us", "why", "", Array(survey, x_ft, y_ft, elevation_ft, drain_elevation_ft, fall_in_per_ft, along, rim_x_in, rim_y_in))
End Function

Public Function OVS_FINISH_TO_DRAIN_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal x_ft As Variant, ByVal y_ft As Variant, ByVal elevation_ft As Variant, Optional ByVal drain_elevation_ft As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_in As Variant, Optional ByVal rim_y_in As Variant) As Variant
    OVS_FINISH_TO_DRAIN_US_GET = Called("finish_to_drain", "us", "get", result, Array(survey, x_ft, y_ft, elevation_ft, drain_elevation_ft, fall_in_per_ft, along, rim_x_in, rim_y_in))
End Function

' Planes that fall from a level perimeter to an area drain, one from each run of the outline.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' x_m: middle of the drain, from the left (m); any finite number
' y_m: middle of the drain, from the front (m); any finite number
' elevation_m: height of the finish all along the outer edges (m); at least -10000 m, at most 10000 m
' drain_elevation_m: height of the drain (m); at least -10000 m, at most 10000 m; may be left out
' fall_percent: fall to the drain, in place of its height (%); at least 0 %, at most 100 %; may be left out
' along: the way the fall is meant along: from the farthest corner or from the nearest place; longest or shortest; left out: longest, because the fall is then met everywhere
' rim_x_mm: size of the drain's level rim along x; none for a point (mm); at least 0 mm, at most 30480 mm; may be left out
' rim_y_mm: its size along y, where it is not square (mm); at least 0 mm, at most 30480 mm; may be left out
' Gives finish (the finish).
Public Function OVS_FINISH_TO_DRAIN_SI(ByVal survey As Variant, ByVal x_m As Variant, ByVal y_m As Variant, ByVal elevation_m As Variant, Optional ByVal drain_elevation_m As Variant, Optional ByVal fall_percent As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_mm As Variant, Optional ByVal rim_y_mm As Variant) As Variant
    OVS_FINISH_TO_DRAIN_SI = Called("finish_to_drain", "si", "value", "", Array(survey, x_m, y_m, elevation_m, drain_elevation_m, fall_percent, along, rim_x_mm, rim_y_mm))
End Function

Public Function OVS_FINISH_TO_DRAIN_SI_WHY(ByVal survey As Variant, ByVal x_m As Variant, ByVal y_m As Variant, ByVal elevation_m As Variant, Optional ByVal drain_elevation_m As Variant, Optional ByVal fall_percent As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_mm As Variant, Optional ByVal rim_y_mm As Variant) As Variant
    OVS_FINISH_TO_DRAIN_SI_WHY = Called("finish_to_drain", "si", "why", "", Array(survey, x_m, y_m, elevation_m, drain_elevation_m, fall_percent, along, rim_x_mm, rim_y_mm))
End Function

Public Function OVS_FINISH_TO_DRAIN_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal x_m As Variant, ByVal y_m As Variant, ByVal elevation_m As Variant, Optional ByVal drain_elevation_m As Variant, Optional ByVal fall_percent As Variant, Optional ByVal along As Variant, Optional ByVal rim_x_mm As Variant, Optional ByVal rim_y_mm As Variant) As Variant
    OVS_FINISH_TO_DRAIN_SI_GET = Called("finish_to_drain", "si", "get", result, Array(survey, x_m, y_m, elevation_m, drain_elevation_m, fall_percent, along, rim_x_mm, rim_y_mm))
End Function

' A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
' survey: the old slab with the edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the finish without the strip; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' edge: name of the edge; a text
' width_ft: width of the strip (ft); at least 0 ft, at most 100 ft
' fall_in_per_ft: fall of the strip, square to the edge (in/ft); at least 0 in/ft, at most 12 in/ft
' toward: what the strip falls to: the edge as an apron, the floor as a curb; edge or floor
' Gives finish (the finish).
Public Function OVS_FINISH_WITH_STRIP_US(ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_ft As Variant, ByVal fall_in_per_ft As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_US = Called("finish_with_strip", "us", "value", "", Array(survey, finish, edge, width_ft, fall_in_per_ft, toward))
End Function

Public Function OVS_FINISH_WITH_STRIP_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_ft As Variant, ByVal fall_in_per_ft As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_US_WHY = Called("finish_with_strip", "us", "why", "", Array(survey, finish, edge, width_ft, fall_in_per_ft, toward))
End Function

Public Function OVS_FINISH_WITH_STRIP_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_ft As Variant, ByVal fall_in_per_ft As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_US_GET = Called("finish_with_strip", "us", "get", result, Array(survey, finish, edge, width_ft, fall_in_per_ft, toward))
End Function

' A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
' survey: the old slab with the edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the finish without the strip; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' edge: name of the edge; a text
' width_m: width of the strip (m); at least 0 m, at most 30.48 m
' fall_percent: fall of the strip, square to the edge (%); at least 0 %, at most 100 %
' toward: what the strip falls to: the edge as an apron, the floor as a curb; edge or floor
' Gives finish (the finish).
Public Function OVS_FINISH_WITH_STRIP_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_m As Variant, ByVal fall_percent As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_SI = Called("finish_with_strip", "si", "value", "", Array(survey, finish, edge, width_m, fall_percent, toward))
End Function

Public Function OVS_FINISH_WITH_STRIP_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_m As Variant, ByVal fall_percent As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_SI_WHY = Called("finish_with_strip", "si", "why", "", Array(survey, finish, edge, width_m, fall_percent, toward))
End Function

Public Function OVS_FINISH_WITH_STRIP_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal edge As Variant, ByVal width_m As Variant, ByVal fall_percent As Variant, ByVal toward As Variant) As Variant
    OVS_FINISH_WITH_STRIP_SI_GET = Called("finish_with_strip", "si", "get", result, Array(survey, finish, edge, width_m, fall_percent, toward))
End Function

' Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the finish as drawn; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' least_in: least thickness (in); at least 0 in, at most 120 in
' margin_in: margin on the least thickness (in); at least 0 in, at most 120 in; may be left out
' round_in: the lift is rounded up to whole steps of this, so that heights given in steps stay so (in); at least 0 in, at most 12 in; may be left out
' Gives finish (the finish), raised_by_in (how far it was lifted; below zero where it was lowered), at_x_ft (the place that fixes it, from the left), at_y_ft (the place that fixes it, from the front), at_shot (the shot there), at_facet (the facet there), rounded_by_in (how much of the lift is rounding).
Public Function OVS_FINISH_RAISED_US(ByVal survey As Variant, ByVal finish As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal round_in As Variant) As Variant
    OVS_FINISH_RAISED_US = Called("finish_raised", "us", "value", "", Array(survey, finish, least_in, margin_in, round_in))
End Function

Public Function OVS_FINISH_RAISED_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal round_in As Variant) As Variant
    OVS_FINISH_RAISED_US_WHY = Called("finish_raised", "us", "why", "", Array(survey, finish, least_in, margin_in, round_in))
End Function

Public Function OVS_FINISH_RAISED_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal round_in As Variant) As Variant
    OVS_FINISH_RAISED_US_GET = Called("finish_raised", "us", "get", result, Array(survey, finish, least_in, margin_in, round_in))
End Function

' Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the finish as drawn; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' least_mm: least thickness (mm); at least 0 mm, at most 3048 mm
' margin_mm: margin on the least thickness (mm); at least 0 mm, at most 3048 mm; may be left out
' round_mm: the lift is rounded up to whole steps of this, so that heights given in steps stay so (mm); at least 0 mm, at most 304.8 mm; may be left out
' Gives finish (the finish), raised_by_mm (how far it was lifted; below zero where it was lowered), at_x_m (the place that fixes it, from the left), at_y_m (the place that fixes it, from the front), at_shot (the shot there), at_facet (the facet there), rounded_by_mm (how much of the lift is rounding).
Public Function OVS_FINISH_RAISED_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal round_mm As Variant) As Variant
    OVS_FINISH_RAISED_SI = Called("finish_raised", "si", "value", "", Array(survey, finish, least_mm, margin_mm, round_mm))
End Function

Public Function OVS_FINISH_RAISED_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal round_mm As Variant) As Variant
    OVS_FINISH_RAISED_SI_WHY = Called("finish_raised", "si", "why", "", Array(survey, finish, least_mm, margin_mm, round_mm))
End Function

Public Function OVS_FINISH_RAISED_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal round_mm As Variant) As Variant
    OVS_FINISH_RAISED_SI_GET = Called("finish_raised", "si", "get", result, Array(survey, finish, least_mm, margin_mm, round_mm))
End Function

' The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
' finish: the finish; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' survey: the work: areas are then of the part inside it; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives; may be left out
' Gives facets (the facets), corners (their corners).
Public Function OVS_FINISH_FACETS_US(ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_US = Called("finish_facets", "us", "value", "", Array(finish, survey))
End Function

Public Function OVS_FINISH_FACETS_US_WHY(ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_US_WHY = Called("finish_facets", "us", "why", "", Array(finish, survey))
End Function

Public Function OVS_FINISH_FACETS_US_GET(ByVal result As Variant, ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_US_GET = Called("finish_facets", "us", "get", result, Array(finish, survey))
End Function

' The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
' finish: the finish; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' survey: the work: areas are then of the part inside it; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives; may be left out
' Gives facets (the facets), corners (their corners).
Public Function OVS_FINISH_FACETS_SI(ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_SI = Called("finish_facets", "si", "value", "", Array(finish, survey))
End Function

Public Function OVS_FINISH_FACETS_SI_WHY(ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_SI_WHY = Called("finish_facets", "si", "why", "", Array(finish, survey))
End Function

Public Function OVS_FINISH_FACETS_SI_GET(ByVal result As Variant, ByVal finish As Variant, Optional ByVal survey As Variant) As Variant
    OVS_FINISH_FACETS_SI_GET = Called("finish_facets", "si", "get", result, Array(finish, survey))
End Function

' The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded to what can be set out.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_in], [fall_in_per_ft], [elevation_ft], [tolerance_in], [edge], [x_ft], [y_ft], [x_to_ft], [y_to_ft], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_ft, y_ft; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives; may be left out
' margin_in: margin on every least thickness (in); at least 0 in, at most 120 in; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' concrete_price_per_yd3: price of concrete (/yd3); at least 0 /yd3, at most 7645548.57984 /yd3; may be left out
' grind_at_most_in: how deep high spots may be ground (in); at least 0 in, at most 120 in; may be left out
' grinding_price_per_yd3: price of what is ground off (/yd3); at least 0 /yd3, at most 7645548.57984 /yd3; may be left out
' round_in: heights are whole steps of this from the datum (in); at least 0 in, at most 12 in; left out: 1/8 in, because finer cannot be set out
' datum_ft: the height the steps are counted from, usually the benchmark (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; left out: 0 ft, because the job datum
' round_fall_in_per_ft: falls are whole steps of this (in/ft); at least 0 in/ft, at most 12 in/ft; left out: 1/16 in/ft, because finer cannot be struck off
' set_out: no for the planned finish as it comes out, with nothing added or rounded; no or yes; may be left out
' Gives finish (the finish to be built, in whole steps), concrete_yd3 (its concrete), ground_yd3 (what is ground off under it), cost_money (concrete and grinding at their prices), planned (the finish before rounding), planned_concrete_yd3 (its concrete), planned_cost_money (its cost), bare (the finish by the demands alone: no margin, nothing added or rounded), bare_concrete_yd3 (its concrete), bare_cost_money (its cost), bound_yd3 (no finish planned so costs less than this, in volume of concrete), gap_ratio (how far the planned cost may be above the least, as a share), least_slack_in (how far the demand that is kept most narrowly is from being broken; less than none by rounding only), rows (how many rows were looked at for that), round_in (the step of heights that could be kept; none where nothing is rounded), round_fall_in_per_ft (the step of falls that could be kept), kept (how each demand stands, and what it costs).
Public Function OVS_FINISH_SOLVED_US(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal grinding_price_per_yd3 As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal round_fall_in_per_ft As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_US = Called("finish_solved", "us", "value", "", Array(survey, demands, zones, layout, margin_in, edges_bind, concrete_price_per_yd3, grind_at_most_in, grinding_price_per_yd3, round_in, datum_ft, round_fall_in_per_ft, set_out))
End Function

Public Function OVS_FINISH_SOLVED_US_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal grinding_price_per_yd3 As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal round_fall_in_per_ft As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_US_WHY = Called("finish_solved", "us", "why", "", Array(survey, demands, zones, layout, margin_in, edges_bind, concrete_price_per_yd3, grind_at_most_in, grinding_price_per_yd3, round_in, datum_ft, round_fall_in_per_ft, set_out))
End Function

Public Function OVS_FINISH_SOLVED_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal grinding_price_per_yd3 As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant, Optional ByVal round_fall_in_per_ft As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_US_GET = Called("finish_solved", "us", "get", result, Array(survey, demands, zones, layout, margin_in, edges_bind, concrete_price_per_yd3, grind_at_most_in, grinding_price_per_yd3, round_in, datum_ft, round_fall_in_per_ft, set_out))
End Function

' The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded to what can be set out.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_mm], [fall_percent], [elevation_m], [tolerance_mm], [edge], [x_m], [y_m], [x_to_m], [y_to_m], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_m, y_m; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives; may be left out
' margin_mm: margin on every least thickness (mm); at least 0 mm, at most 3048 mm; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' concrete_price_per_m3: price of concrete (/m3); at least 0 /m3, at most 10000000 /m3; may be left out
' grind_at_most_mm: how deep high spots may be ground (mm); at least 0 mm, at most 3048 mm; may be left out
' grinding_price_per_m3: price of what is ground off (/m3); at least 0 /m3, at most 10000000 /m3; may be left out
' round_mm: heights are whole steps of this from the datum (mm); at least 0 mm, at most 304.8 mm; left out: 1/8 in, because finer cannot be set out
' datum_m: the height the steps are counted from, usually the benchmark (m); at least -10000 m, at most 10000 m; left out: 0 ft, because the job datum
' round_fall_percent: falls are whole steps of this (%); at least 0 %, at most 100 %; left out: 1/16 in/ft, because finer cannot be struck off
' set_out: no for the planned finish as it comes out, with nothing added or rounded; no or yes; may be left out
' Gives finish (the finish to be built, in whole steps), concrete_m3 (its concrete), ground_m3 (what is ground off under it), cost_money (concrete and grinding at their prices), planned (the finish before rounding), planned_concrete_m3 (its concrete), planned_cost_money (its cost), bare (the finish by the demands alone: no margin, nothing added or rounded), bare_concrete_m3 (its concrete), bare_cost_money (its cost), bound_m3 (no finish planned so costs less than this, in volume of concrete), gap_ratio (how far the planned cost may be above the least, as a share), least_slack_mm (how far the demand that is kept most narrowly is from being broken; less than none by rounding only), rows (how many rows were looked at for that), round_mm (the step of heights that could be kept; none where nothing is rounded), round_fall_percent (the step of falls that could be kept), kept (how each demand stands, and what it costs).
Public Function OVS_FINISH_SOLVED_SI(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal grinding_price_per_m3 As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal round_fall_percent As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_SI = Called("finish_solved", "si", "value", "", Array(survey, demands, zones, layout, margin_mm, edges_bind, concrete_price_per_m3, grind_at_most_mm, grinding_price_per_m3, round_mm, datum_m, round_fall_percent, set_out))
End Function

Public Function OVS_FINISH_SOLVED_SI_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal grinding_price_per_m3 As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal round_fall_percent As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_SI_WHY = Called("finish_solved", "si", "why", "", Array(survey, demands, zones, layout, margin_mm, edges_bind, concrete_price_per_m3, grind_at_most_mm, grinding_price_per_m3, round_mm, datum_m, round_fall_percent, set_out))
End Function

Public Function OVS_FINISH_SOLVED_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal grinding_price_per_m3 As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant, Optional ByVal round_fall_percent As Variant, Optional ByVal set_out As Variant) As Variant
    OVS_FINISH_SOLVED_SI_GET = Called("finish_solved", "si", "get", result, Array(survey, demands, zones, layout, margin_mm, edges_bind, concrete_price_per_m3, grind_at_most_mm, grinding_price_per_m3, round_mm, datum_m, round_fall_percent, set_out))
End Function

' Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands would have to give way.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_in], [fall_in_per_ft], [elevation_ft], [tolerance_in], [edge], [x_ft], [y_ft], [x_to_ft], [y_to_ft], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_ft, y_ft; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives; may be left out
' margin_in: margin on every least thickness (in); at least 0 in, at most 120 in; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' Gives kept (whether all can be kept), complete (whether these are all the sets; at most ten are told), sets (the sets), alone (what mends everything alone), together (what mends everything with the least weighted sum), said (all of it in sentences).
Public Function OVS_FINISH_CONFLICTS_US(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_US = Called("finish_conflicts", "us", "value", "", Array(survey, demands, zones, layout, margin_in, edges_bind))
End Function

Public Function OVS_FINISH_CONFLICTS_US_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_US_WHY = Called("finish_conflicts", "us", "why", "", Array(survey, demands, zones, layout, margin_in, edges_bind))
End Function

Public Function OVS_FINISH_CONFLICTS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_US_GET = Called("finish_conflicts", "us", "get", result, Array(survey, demands, zones, layout, margin_in, edges_bind))
End Function

' Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands would have to give way.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_mm], [fall_percent], [elevation_m], [tolerance_mm], [edge], [x_m], [y_m], [x_to_m], [y_to_m], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_m, y_m; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives; may be left out
' margin_mm: margin on every least thickness (mm); at least 0 mm, at most 3048 mm; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' Gives kept (whether all can be kept), complete (whether these are all the sets; at most ten are told), sets (the sets), alone (what mends everything alone), together (what mends everything with the least weighted sum), said (all of it in sentences).
Public Function OVS_FINISH_CONFLICTS_SI(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_SI = Called("finish_conflicts", "si", "value", "", Array(survey, demands, zones, layout, margin_mm, edges_bind))
End Function

Public Function OVS_FINISH_CONFLICTS_SI_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_SI_WHY = Called("finish_conflicts", "si", "why", "", Array(survey, demands, zones, layout, margin_mm, edges_bind))
End Function

Public Function OVS_FINISH_CONFLICTS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant) As Variant
    OVS_FINISH_CONFLICTS_SI_GET = Called("finish_conflicts", "si", "get", result, Array(survey, demands, zones, layout, margin_mm, edges_bind))
End Function

' The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_in], [fall_in_per_ft], [elevation_ft], [tolerance_in], [edge], [x_ft], [y_ft], [x_to_ft], [y_to_ft], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_ft, y_ft; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives; may be left out
' margin_in: margin on every least thickness (in); at least 0 in, at most 120 in; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' demand: the name of the demand; a text
' values: the values it takes in turn; a range with the columns [length_in], [fall_in_per_ft], [elevation_ft]
' Gives curve (the concrete for each value).
Public Function OVS_FINISH_SWEEP_US(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_US = Called("finish_sweep", "us", "value", "", Array(survey, demands, zones, layout, margin_in, edges_bind, demand, values))
End Function

Public Function OVS_FINISH_SWEEP_US_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_US_WHY = Called("finish_sweep", "us", "why", "", Array(survey, demands, zones, layout, margin_in, edges_bind, demand, values))
End Function

Public Function OVS_FINISH_SWEEP_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_in As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_US_GET = Called("finish_sweep", "us", "get", result, Array(survey, demands, zones, layout, margin_in, edges_bind, demand, values))
End Function

' The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' demands: what the finish must keep; a range with the columns name, kind, [thickness_mm], [fall_percent], [elevation_m], [tolerance_mm], [edge], [x_m], [y_m], [x_to_m], [y_to_m], [facet], [zone], [firm], [weight_ratio]
' zones: corners of the zones that demands name; a range with the columns zone, x_m, y_m; may be left out
' layout: the facets in plan: a finish whose heights do not count; one plane if it is left out; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives; may be left out
' margin_mm: margin on every least thickness (mm); at least 0 mm, at most 3048 mm; left out: 3/8 in, because reading, texture and strike-off
' edges_bind: whether thickness binds beyond the shots too, where the old slab is extended; no or yes; may be left out
' demand: the name of the demand; a text
' values: the values it takes in turn; a range with the columns [length_mm], [fall_percent], [elevation_m]
' Gives curve (the concrete for each value).
Public Function OVS_FINISH_SWEEP_SI(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_SI = Called("finish_sweep", "si", "value", "", Array(survey, demands, zones, layout, margin_mm, edges_bind, demand, values))
End Function

Public Function OVS_FINISH_SWEEP_SI_WHY(ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_SI_WHY = Called("finish_sweep", "si", "why", "", Array(survey, demands, zones, layout, margin_mm, edges_bind, demand, values))
End Function

Public Function OVS_FINISH_SWEEP_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal demands As Variant, Optional ByVal zones As Variant, Optional ByVal layout As Variant, Optional ByVal margin_mm As Variant, Optional ByVal edges_bind As Variant, Optional ByVal demand As Variant, Optional ByVal values As Variant) As Variant
    OVS_FINISH_SWEEP_SI_GET = Called("finish_sweep", "si", "get", result, Array(survey, demands, zones, layout, margin_mm, edges_bind, demand, values))
End Function

' The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' thinner_than_in: the area thinner than this is told (in); at least -3937.00787402 in, at most 3937.00787402 in; may be left out
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives area_ft2 (plan area), net_yd3 (fill less high spots), fill_yd3 (volume where the finish is above the old slab), high_yd3 (volume of old slab above the finish), mean_in (net volume over area), least_in (least thickness), least_x_ft (where it is, from the left), least_y_ft (where it is, from the front), least_measured_in (least thickness between the shots), greatest_in (greatest thickness), greatest_x_ft (where it is, from the left), greatest_y_ft (where it is, from the front), thinner_ft2 (area thinner than the depth asked about), least_facet (the facet where it is thinnest), greatest_facet (the facet where it is thickest).
Public Function OVS_THICKNESS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_US = Called("thickness", "us", "value", "", Array(survey, finish, thinner_than_in, zone))
End Function

Public Function OVS_THICKNESS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_US_WHY = Called("thickness", "us", "why", "", Array(survey, finish, thinner_than_in, zone))
End Function

Public Function OVS_THICKNESS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_US_GET = Called("thickness", "us", "get", result, Array(survey, finish, thinner_than_in, zone))
End Function

' The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' thinner_than_mm: the area thinner than this is told (mm); at least -100000 mm, at most 100000 mm; may be left out
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives area_m2 (plan area), net_m3 (fill less high spots), fill_m3 (volume where the finish is above the old slab), high_m3 (volume of old slab above the finish), mean_mm (net volume over area), least_mm (least thickness), least_x_m (where it is, from the left), least_y_m (where it is, from the front), least_measured_mm (least thickness between the shots), greatest_mm (greatest thickness), greatest_x_m (where it is, from the left), greatest_y_m (where it is, from the front), thinner_m2 (area thinner than the depth asked about), least_facet (the facet where it is thinnest), greatest_facet (the facet where it is thickest).
Public Function OVS_THICKNESS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_SI = Called("thickness", "si", "value", "", Array(survey, finish, thinner_than_mm, zone))
End Function

Public Function OVS_THICKNESS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_SI_WHY = Called("thickness", "si", "why", "", Array(survey, finish, thinner_than_mm, zone))
End Function

Public Function OVS_THICKNESS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal thinner_than_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_THICKNESS_SI_GET = Called("thickness", "si", "get", result, Array(survey, finish, thinner_than_mm, zone))
End Function

' The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' Gives governing (the shots that fix the grade), drop_without_all_in (how far the finish could drop without all of them).
Public Function OVS_SECOND_LOOK_US(ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_US = Called("second_look", "us", "value", "", Array(survey, finish))
End Function

Public Function OVS_SECOND_LOOK_US_WHY(ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_US_WHY = Called("second_look", "us", "why", "", Array(survey, finish))
End Function

Public Function OVS_SECOND_LOOK_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_US_GET = Called("second_look", "us", "get", result, Array(survey, finish))
End Function

' The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' Gives governing (the shots that fix the grade), drop_without_all_mm (how far the finish could drop without all of them).
Public Function OVS_SECOND_LOOK_SI(ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_SI = Called("second_look", "si", "value", "", Array(survey, finish))
End Function

Public Function OVS_SECOND_LOOK_SI_WHY(ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_SI_WHY = Called("second_look", "si", "why", "", Array(survey, finish))
End Function

Public Function OVS_SECOND_LOOK_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant) As Variant
    OVS_SECOND_LOOK_SI_GET = Called("second_look", "si", "get", result, Array(survey, finish))
End Function

' The ponds of a finish, and which ponds of the old slab it cures.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_ft, y_ft, [name]; may be left out
' shallowest_in: ponds shallower than this are left out (in); at least 0 in, at most 12 in; left out: 1/16 in, because a rod hardly tells less
' Gives count (how many ponds the finish has), area_ft2 (area of the finish under water), volume_ft3 (water on the finish), depth_in (greatest depth on the finish; none without a pond), left_out (how many ponds of the finish were shallower), cured (how many ponds of the old slab are cured), left (how many ponds of the old slab are not), ponds (the ponds of the finish), old_ponds (the ponds of the old slab).
Public Function OVS_FINISH_STANDING_WATER_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_FINISH_STANDING_WATER_US = Called("finish_standing_water", "us", "value", "", Array(survey, finish, edges, drains, shallowest_in))
End Function

Public Function OVS_FINISH_STANDING_WATER_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_FINISH_STANDING_WATER_US_WHY = Called("finish_standing_water", "us", "why", "", Array(survey, finish, edges, drains, shallowest_in))
End Function

Public Function OVS_FINISH_STANDING_WATER_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant) As Variant
    OVS_FINISH_STANDING_WATER_US_GET = Called("finish_standing_water", "us", "get", result, Array(survey, finish, edges, drains, shallowest_in))
End Function

' The ponds of a finish, and which ponds of the old slab it cures.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_m, y_m, [name]; may be left out
' shallowest_mm: ponds shallower than this are left out (mm); at least 0 mm, at most 304.8 mm; left out: 1/16 in, because a rod hardly tells less
' Gives count (how many ponds the finish has), area_m2 (area of the finish under water), volume_m3 (water on the finish), depth_mm (greatest depth on the finish; none without a pond), left_out (how many ponds of the finish were shallower), cured (how many ponds of the old slab are cured), left (how many ponds of the old slab are not), ponds (the ponds of the finish), old_ponds (the ponds of the old slab).
Public Function OVS_FINISH_STANDING_WATER_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_FINISH_STANDING_WATER_SI = Called("finish_standing_water", "si", "value", "", Array(survey, finish, edges, drains, shallowest_mm))
End Function

Public Function OVS_FINISH_STANDING_WATER_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_FINISH_STANDING_WATER_SI_WHY = Called("finish_standing_water", "si", "why", "", Array(survey, finish, edges, drains, shallowest_mm))
End Function

Public Function OVS_FINISH_STANDING_WATER_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant) As Variant
    OVS_FINISH_STANDING_WATER_SI_GET = Called("finish_standing_water", "si", "get", result, Array(survey, finish, edges, drains, shallowest_mm))
End Function

' The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the surface it is ground to, or a finish above it; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' below_in: it is ground to so much under that surface (in); at least 0 in, at most 120 in; left out: 0 in, because it is ground to the surface itself
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives survey (the old slab after it), area_ft2 (area ground or filled), volume_ft3 (volume taken off or filled), deepest_in (deepest cut or fill; none where nothing is changed), deepest_x_ft (where it is, from the left), deepest_y_ft (where it is, from the front).
Public Function OVS_GRIND_HIGH_SPOTS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_US = Called("grind_high_spots", "us", "value", "", Array(survey, finish, below_in, zone))
End Function

Public Function OVS_GRIND_HIGH_SPOTS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_US_WHY = Called("grind_high_spots", "us", "why", "", Array(survey, finish, below_in, zone))
End Function

Public Function OVS_GRIND_HIGH_SPOTS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_US_GET = Called("grind_high_spots", "us", "get", result, Array(survey, finish, below_in, zone))
End Function

' The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the surface it is ground to, or a finish above it; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' below_mm: it is ground to so much under that surface (mm); at least 0 mm, at most 3048 mm; left out: 0 in, because it is ground to the surface itself
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives survey (the old slab after it), area_m2 (area ground or filled), volume_m3 (volume taken off or filled), deepest_mm (deepest cut or fill; none where nothing is changed), deepest_x_m (where it is, from the left), deepest_y_m (where it is, from the front).
Public Function OVS_GRIND_HIGH_SPOTS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_SI = Called("grind_high_spots", "si", "value", "", Array(survey, finish, below_mm, zone))
End Function

Public Function OVS_GRIND_HIGH_SPOTS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_SI_WHY = Called("grind_high_spots", "si", "why", "", Array(survey, finish, below_mm, zone))
End Function

Public Function OVS_GRIND_HIGH_SPOTS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_GRIND_HIGH_SPOTS_SI_GET = Called("grind_high_spots", "si", "get", result, Array(survey, finish, below_mm, zone))
End Function

' The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the surface it is filled to, or a finish above it; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' below_in: it is filled to so much under that surface (in); at least 0 in, at most 120 in; left out: 0 in, because it is filled to the surface itself
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives survey (the old slab after it), area_ft2 (area ground or filled), volume_ft3 (volume taken off or filled), deepest_in (deepest cut or fill; none where nothing is changed), deepest_x_ft (where it is, from the left), deepest_y_ft (where it is, from the front).
Public Function OVS_FILL_LOW_SPOTS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_US = Called("fill_low_spots", "us", "value", "", Array(survey, finish, below_in, zone))
End Function

Public Function OVS_FILL_LOW_SPOTS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_US_WHY = Called("fill_low_spots", "us", "why", "", Array(survey, finish, below_in, zone))
End Function

Public Function OVS_FILL_LOW_SPOTS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_US_GET = Called("fill_low_spots", "us", "get", result, Array(survey, finish, below_in, zone))
End Function

' The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the surface it is filled to, or a finish above it; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' below_mm: it is filled to so much under that surface (mm); at least 0 mm, at most 3048 mm; left out: 0 in, because it is filled to the surface itself
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives survey (the old slab after it), area_m2 (area ground or filled), volume_m3 (volume taken off or filled), deepest_mm (deepest cut or fill; none where nothing is changed), deepest_x_m (where it is, from the left), deepest_y_m (where it is, from the front).
Public Function OVS_FILL_LOW_SPOTS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_SI = Called("fill_low_spots", "si", "value", "", Array(survey, finish, below_mm, zone))
End Function

Public Function OVS_FILL_LOW_SPOTS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_SI_WHY = Called("fill_low_spots", "si", "why", "", Array(survey, finish, below_mm, zone))
End Function

Public Function OVS_FILL_LOW_SPOTS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal below_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_LOW_SPOTS_SI_GET = Called("fill_low_spots", "si", "get", result, Array(survey, finish, below_mm, zone))
End Function

' The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_ft, y_ft, [name]; may be left out
' shallowest_in: ponds shallower than this are left (in); at least 0 in, at most 12 in; left out: 1/16 in, because a rod hardly tells less
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives survey (the old slab after it), area_ft2 (area ground or filled), volume_ft3 (volume taken off or filled), deepest_in (deepest cut or fill; none where nothing is changed), deepest_x_ft (where it is, from the left), deepest_y_ft (where it is, from the front).
Public Function OVS_FILL_PONDS_US(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_US = Called("fill_ponds", "us", "value", "", Array(survey, edges, drains, shallowest_in, zone))
End Function

Public Function OVS_FILL_PONDS_US_WHY(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_US_WHY = Called("fill_ponds", "us", "why", "", Array(survey, edges, drains, shallowest_in, zone))
End Function

Public Function OVS_FILL_PONDS_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_US_GET = Called("fill_ponds", "us", "get", result, Array(survey, edges, drains, shallowest_in, zone))
End Function

' The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_m, y_m, [name]; may be left out
' shallowest_mm: ponds shallower than this are left (mm); at least 0 mm, at most 304.8 mm; left out: 1/16 in, because a rod hardly tells less
' zone: only within this outline; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives survey (the old slab after it), area_m2 (area ground or filled), volume_m3 (volume taken off or filled), deepest_mm (deepest cut or fill; none where nothing is changed), deepest_x_m (where it is, from the left), deepest_y_m (where it is, from the front).
Public Function OVS_FILL_PONDS_SI(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_SI = Called("fill_ponds", "si", "value", "", Array(survey, edges, drains, shallowest_mm, zone))
End Function

Public Function OVS_FILL_PONDS_SI_WHY(ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_SI_WHY = Called("fill_ponds", "si", "why", "", Array(survey, edges, drains, shallowest_mm, zone))
End Function

Public Function OVS_FILL_PONDS_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal zone As Variant) As Variant
    OVS_FILL_PONDS_SI_GET = Called("fill_ponds", "si", "get", result, Array(survey, edges, drains, shallowest_mm, zone))
End Function

' Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' depth_in: the depth (in); at least -3937.00787402 in, at most 3937.00787402 in
' side: which side of the depth; thinner or thicker; left out: thinner, because thin places are what is looked for
' Gives area_ft2 (area of all parts), volume_yd3 (missing to the depth, or over it, in all parts), parts (the connected parts), corners (the corners of their polygons).
Public Function OVS_THICKNESS_AREAS_US(ByVal survey As Variant, ByVal finish As Variant, ByVal depth_in As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_US = Called("thickness_areas", "us", "value", "", Array(survey, finish, depth_in, side))
End Function

Public Function OVS_THICKNESS_AREAS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal depth_in As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_US_WHY = Called("thickness_areas", "us", "why", "", Array(survey, finish, depth_in, side))
End Function

Public Function OVS_THICKNESS_AREAS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal depth_in As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_US_GET = Called("thickness_areas", "us", "get", result, Array(survey, finish, depth_in, side))
End Function

' Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' depth_mm: the depth (mm); at least -100000 mm, at most 100000 mm
' side: which side of the depth; thinner or thicker; left out: thinner, because thin places are what is looked for
' Gives area_m2 (area of all parts), volume_m3 (missing to the depth, or over it, in all parts), parts (the connected parts), corners (the corners of their polygons).
Public Function OVS_THICKNESS_AREAS_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal depth_mm As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_SI = Called("thickness_areas", "si", "value", "", Array(survey, finish, depth_mm, side))
End Function

Public Function OVS_THICKNESS_AREAS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal depth_mm As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_SI_WHY = Called("thickness_areas", "si", "why", "", Array(survey, finish, depth_mm, side))
End Function

Public Function OVS_THICKNESS_AREAS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal depth_mm As Variant, Optional ByVal side As Variant) As Variant
    OVS_THICKNESS_AREAS_SI_GET = Called("thickness_areas", "si", "get", result, Array(survey, finish, depth_mm, side))
End Function

' Lines of equal thickness.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' levels: the levels, rising; a range with the columns level_in; may be left out
' interval_in: the step between levels, in place of a list (in); more than 0 in, at most 3937.00787402 in; may be left out
' counted_from_in: a level that the steps are counted from (in); at least -3937.00787402 in, at most 3937.00787402 in; left out: 0 in, because whole steps of the interval
' Gives lines (the lines), points (their places).
Public Function OVS_THICKNESS_CONTOURS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_CONTOURS_US = Called("thickness_contours", "us", "value", "", Array(survey, finish, levels, interval_in, counted_from_in))
End Function

Public Function OVS_THICKNESS_CONTOURS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_CONTOURS_US_WHY = Called("thickness_contours", "us", "why", "", Array(survey, finish, levels, interval_in, counted_from_in))
End Function

Public Function OVS_THICKNESS_CONTOURS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_CONTOURS_US_GET = Called("thickness_contours", "us", "get", result, Array(survey, finish, levels, interval_in, counted_from_in))
End Function

' Lines of equal thickness.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' levels: the levels, rising; a range with the columns level_mm; may be left out
' interval_mm: the step between levels, in place of a list (mm); more than 0 mm, at most 100000 mm; may be left out
' counted_from_mm: a level that the steps are counted from (mm); at least -100000 mm, at most 100000 mm; left out: 0 in, because whole steps of the interval
' Gives lines (the lines), points (their places).
Public Function OVS_THICKNESS_CONTOURS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_CONTOURS_SI = Called("thickness_contours", "si", "value", "", Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

Public Function OVS_THICKNESS_CONTOURS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_CONTOURS_SI_WHY = Called("thickness_contours", "si", "why", "", Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

Public Function OVS_THICKNESS_CONTOURS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_CONTOURS_SI_GET = Called("thickness_contours", "si", "get", result, Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

' Lines of equal height on the old slab.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' levels: the levels, rising; a range with the columns level_ft; may be left out
' interval_in: the step between levels, in place of a list (in); more than 0 in, at most 3937.00787402 in; may be left out
' counted_from_ft: a level that the steps are counted from (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; left out: 0 ft, because whole steps from the job datum
' Gives lines (the lines), points (their places).
Public Function OVS_SURVEY_CONTOURS_US(ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_SURVEY_CONTOURS_US = Called("survey_contours", "us", "value", "", Array(survey, levels, interval_in, counted_from_ft))
End Function

Public Function OVS_SURVEY_CONTOURS_US_WHY(ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_SURVEY_CONTOURS_US_WHY = Called("survey_contours", "us", "why", "", Array(survey, levels, interval_in, counted_from_ft))
End Function

Public Function OVS_SURVEY_CONTOURS_US_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_SURVEY_CONTOURS_US_GET = Called("survey_contours", "us", "get", result, Array(survey, levels, interval_in, counted_from_ft))
End Function

' Lines of equal height on the old slab.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' levels: the levels, rising; a range with the columns level_m; may be left out
' interval_mm: the step between levels, in place of a list (mm); more than 0 mm, at most 100000 mm; may be left out
' counted_from_m: a level that the steps are counted from (m); at least -10000 m, at most 10000 m; left out: 0 ft, because whole steps from the job datum
' Gives lines (the lines), points (their places).
Public Function OVS_SURVEY_CONTOURS_SI(ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_SURVEY_CONTOURS_SI = Called("survey_contours", "si", "value", "", Array(survey, levels, interval_mm, counted_from_m))
End Function

Public Function OVS_SURVEY_CONTOURS_SI_WHY(ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_SURVEY_CONTOURS_SI_WHY = Called("survey_contours", "si", "why", "", Array(survey, levels, interval_mm, counted_from_m))
End Function

Public Function OVS_SURVEY_CONTOURS_SI_GET(ByVal result As Variant, ByVal survey As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_SURVEY_CONTOURS_SI_GET = Called("survey_contours", "si", "get", result, Array(survey, levels, interval_mm, counted_from_m))
End Function

' Lines of equal height on the finish, over the work.
' survey: the old slab, whose outline bounds the lines; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' levels: the levels, rising; a range with the columns level_ft; may be left out
' interval_in: the step between levels, in place of a list (in); more than 0 in, at most 3937.00787402 in; may be left out
' counted_from_ft: a level that the steps are counted from (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; left out: 0 ft, because whole steps from the job datum
' Gives lines (the lines), points (their places).
Public Function OVS_FINISH_CONTOURS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_FINISH_CONTOURS_US = Called("finish_contours", "us", "value", "", Array(survey, finish, levels, interval_in, counted_from_ft))
End Function

Public Function OVS_FINISH_CONTOURS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_FINISH_CONTOURS_US_WHY = Called("finish_contours", "us", "why", "", Array(survey, finish, levels, interval_in, counted_from_ft))
End Function

Public Function OVS_FINISH_CONTOURS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_ft As Variant) As Variant
    OVS_FINISH_CONTOURS_US_GET = Called("finish_contours", "us", "get", result, Array(survey, finish, levels, interval_in, counted_from_ft))
End Function

' Lines of equal height on the finish, over the work.
' survey: the old slab, whose outline bounds the lines; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' levels: the levels, rising; a range with the columns level_m; may be left out
' interval_mm: the step between levels, in place of a list (mm); more than 0 mm, at most 100000 mm; may be left out
' counted_from_m: a level that the steps are counted from (m); at least -10000 m, at most 10000 m; left out: 0 ft, because whole steps from the job datum
' Gives lines (the lines), points (their places).
Public Function OVS_FINISH_CONTOURS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_FINISH_CONTOURS_SI = Called("finish_contours", "si", "value", "", Array(survey, finish, levels, interval_mm, counted_from_m))
End Function

Public Function OVS_FINISH_CONTOURS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_FINISH_CONTOURS_SI_WHY = Called("finish_contours", "si", "why", "", Array(survey, finish, levels, interval_mm, counted_from_m))
End Function

Public Function OVS_FINISH_CONTOURS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_m As Variant) As Variant
    OVS_FINISH_CONTOURS_SI_GET = Called("finish_contours", "si", "get", result, Array(survey, finish, levels, interval_mm, counted_from_m))
End Function

' The work in bands of thickness between successive levels, as polygons with area and volume.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' levels: the levels, rising; a range with the columns level_in; may be left out
' interval_in: the step between levels, in place of a list (in); more than 0 in, at most 3937.00787402 in; may be left out
' counted_from_in: a level that the steps are counted from (in); at least -3937.00787402 in, at most 3937.00787402 in; left out: 0 in, because whole steps of the interval
' Gives bands (the bands), parts (their connected parts), corners (the corners of their polygons).
Public Function OVS_THICKNESS_BANDS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_BANDS_US = Called("thickness_bands", "us", "value", "", Array(survey, finish, levels, interval_in, counted_from_in))
End Function

Public Function OVS_THICKNESS_BANDS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_BANDS_US_WHY = Called("thickness_bands", "us", "why", "", Array(survey, finish, levels, interval_in, counted_from_in))
End Function

Public Function OVS_THICKNESS_BANDS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant) As Variant
    OVS_THICKNESS_BANDS_US_GET = Called("thickness_bands", "us", "get", result, Array(survey, finish, levels, interval_in, counted_from_in))
End Function

' The work in bands of thickness between successive levels, as polygons with area and volume.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' levels: the levels, rising; a range with the columns level_mm; may be left out
' interval_mm: the step between levels, in place of a list (mm); more than 0 mm, at most 100000 mm; may be left out
' counted_from_mm: a level that the steps are counted from (mm); at least -100000 mm, at most 100000 mm; left out: 0 in, because whole steps of the interval
' Gives bands (the bands), parts (their connected parts), corners (the corners of their polygons).
Public Function OVS_THICKNESS_BANDS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_BANDS_SI = Called("thickness_bands", "si", "value", "", Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

Public Function OVS_THICKNESS_BANDS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_BANDS_SI_WHY = Called("thickness_bands", "si", "why", "", Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

Public Function OVS_THICKNESS_BANDS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant) As Variant
    OVS_THICKNESS_BANDS_SI_GET = Called("thickness_bands", "si", "get", result, Array(survey, finish, levels, interval_mm, counted_from_mm))
End Function

' How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of the area lie.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' levels: the edges of the bins, rising; a range with the columns level_in; may be left out
' interval_in: the width of a bin, in place of a list of edges (in); more than 0 in, at most 3937.00787402 in; may be left out
' counted_from_in: an edge that the widths are counted from (in); at least -3937.00787402 in, at most 3937.00787402 in; left out: 0 in, because whole steps of the width
' shares: shares of the area whose depths are told; a range with the columns share_percent; left out: [{"share": "0 %"}, {"share": "25 %"}, {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest
' Gives area_ft2 (the whole area), volume_yd3 (the whole volume, high spots taken off), bins (the bins), quantiles (the depths of the shares).
Public Function OVS_THICKNESS_HISTOGRAM_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_US = Called("thickness_histogram", "us", "value", "", Array(survey, finish, levels, interval_in, counted_from_in, shares))
End Function

Public Function OVS_THICKNESS_HISTOGRAM_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_US_WHY = Called("thickness_histogram", "us", "why", "", Array(survey, finish, levels, interval_in, counted_from_in, shares))
End Function

Public Function OVS_THICKNESS_HISTOGRAM_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_in As Variant, Optional ByVal counted_from_in As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_US_GET = Called("thickness_histogram", "us", "get", result, Array(survey, finish, levels, interval_in, counted_from_in, shares))
End Function

' How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of the area lie.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' levels: the edges of the bins, rising; a range with the columns level_mm; may be left out
' interval_mm: the width of a bin, in place of a list of edges (mm); more than 0 mm, at most 100000 mm; may be left out
' counted_from_mm: an edge that the widths are counted from (mm); at least -100000 mm, at most 100000 mm; left out: 0 in, because whole steps of the width
' shares: shares of the area whose depths are told; a range with the columns share_percent; left out: [{"share": "0 %"}, {"share": "25 %"}, {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest
' Gives area_m2 (the whole area), volume_m3 (the whole volume, high spots taken off), bins (the bins), quantiles (the depths of the shares).
Public Function OVS_THICKNESS_HISTOGRAM_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_SI = Called("thickness_histogram", "si", "value", "", Array(survey, finish, levels, interval_mm, counted_from_mm, shares))
End Function

Public Function OVS_THICKNESS_HISTOGRAM_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_SI_WHY = Called("thickness_histogram", "si", "why", "", Array(survey, finish, levels, interval_mm, counted_from_mm, shares))
End Function

Public Function OVS_THICKNESS_HISTOGRAM_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal levels As Variant, Optional ByVal interval_mm As Variant, Optional ByVal counted_from_mm As Variant, Optional ByVal shares As Variant) As Variant
    OVS_THICKNESS_HISTOGRAM_SI_GET = Called("thickness_histogram", "si", "get", result, Array(survey, finish, levels, interval_mm, counted_from_mm, shares))
End Function

' The thickness over zones of the work, each with its own figures, and over what no zone covers.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' zones: the corners of the zones; a range with the columns zone, x_ft, y_ft
' thinner_than_in: the area thinner than this is told (in); at least -3937.00787402 in, at most 3937.00787402 in; may be left out
' Gives figures (the figures of each zone), rest (the figures of the work outside all zones).
Public Function OVS_THICKNESS_ZONES_US(ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_in As Variant) As Variant
    OVS_THICKNESS_ZONES_US = Called("thickness_zones", "us", "value", "", Array(survey, finish, zones, thinner_than_in))
End Function

Public Function OVS_THICKNESS_ZONES_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_in As Variant) As Variant
    OVS_THICKNESS_ZONES_US_WHY = Called("thickness_zones", "us", "why", "", Array(survey, finish, zones, thinner_than_in))
End Function

Public Function OVS_THICKNESS_ZONES_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_in As Variant) As Variant
    OVS_THICKNESS_ZONES_US_GET = Called("thickness_zones", "us", "get", result, Array(survey, finish, zones, thinner_than_in))
End Function

' The thickness over zones of the work, each with its own figures, and over what no zone covers.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' zones: the corners of the zones; a range with the columns zone, x_m, y_m
' thinner_than_mm: the area thinner than this is told (mm); at least -100000 mm, at most 100000 mm; may be left out
' Gives figures (the figures of each zone), rest (the figures of the work outside all zones).
Public Function OVS_THICKNESS_ZONES_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_mm As Variant) As Variant
    OVS_THICKNESS_ZONES_SI = Called("thickness_zones", "si", "value", "", Array(survey, finish, zones, thinner_than_mm))
End Function

Public Function OVS_THICKNESS_ZONES_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_mm As Variant) As Variant
    OVS_THICKNESS_ZONES_SI_WHY = Called("thickness_zones", "si", "why", "", Array(survey, finish, zones, thinner_than_mm))
End Function

Public Function OVS_THICKNESS_ZONES_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal zones As Variant, Optional ByVal thinner_than_mm As Variant) As Variant
    OVS_THICKNESS_ZONES_SI_GET = Called("thickness_zones", "si", "get", result, Array(survey, finish, zones, thinner_than_mm))
End Function

' The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes and costs.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' minimum_in: least thickness of an unbonded overlay (in); more than 0 in, at most 120 in
' bonded_minimum_in: least thickness of a bonded part, at most the unbonded one (in); more than 0 in, at most 120 in; may be left out
' grind_at_most_in: how deep the old slab may be ground (in); at least 0 in, at most 120 in; may be left out
' new_thickness_in: thickness of the concrete where the old slab is broken out, down from the finish (in); more than 0 in, at most 120 in; may be left out
' concrete_price_per_yd3: price of concrete (/yd3); at least 0 /yd3, at most 7645548.57984 /yd3; may be left out
' bonding_price_per_ft2: price of bonding: milling, cleaning and slurry together (/ft2); at least 0 /ft2, at most 929030.4 /ft2; may be left out
' grinding_price_per_ft2: price of grinding (/ft2); at least 0 /ft2, at most 929030.4 /ft2; may be left out
' breaking_out_price_per_ft2: price of breaking out, hauling with it (/ft2); at least 0 /ft2, at most 929030.4 /ft2; may be left out
' Gives area_ft2 (area of all that is thinner), lacking_yd3 (volume all of it lacks to the minimum), left_out_ft2 (area of zones under a square millimetre, not listed), raise_all_in (rise of the whole finish that leaves no zone; none where there is none), raise_all_concrete_yd3 (concrete it takes), raise_all_cost_money (what it costs), zone_by_zone_cost_money (all zones, each in the cheapest way without raising), said (all of it in a few sentences), zones (the zones), choices (the choices about each), corners (the corners of their polygons).
Public Function OVS_THIN_ZONES_US(ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_in As Variant, Optional ByVal bonded_minimum_in As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal bonding_price_per_ft2 As Variant, Optional ByVal grinding_price_per_ft2 As Variant, Optional ByVal breaking_out_price_per_ft2 As Variant) As Variant
    OVS_THIN_ZONES_US = Called("thin_zones", "us", "value", "", Array(survey, finish, minimum_in, bonded_minimum_in, grind_at_most_in, new_thickness_in, concrete_price_per_yd3, bonding_price_per_ft2, grinding_price_per_ft2, breaking_out_price_per_ft2))
End Function

Public Function OVS_THIN_ZONES_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_in As Variant, Optional ByVal bonded_minimum_in As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal bonding_price_per_ft2 As Variant, Optional ByVal grinding_price_per_ft2 As Variant, Optional ByVal breaking_out_price_per_ft2 As Variant) As Variant
    OVS_THIN_ZONES_US_WHY = Called("thin_zones", "us", "why", "", Array(survey, finish, minimum_in, bonded_minimum_in, grind_at_most_in, new_thickness_in, concrete_price_per_yd3, bonding_price_per_ft2, grinding_price_per_ft2, breaking_out_price_per_ft2))
End Function

Public Function OVS_THIN_ZONES_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_in As Variant, Optional ByVal bonded_minimum_in As Variant, Optional ByVal grind_at_most_in As Variant, Optional ByVal new_thickness_in As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal bonding_price_per_ft2 As Variant, Optional ByVal grinding_price_per_ft2 As Variant, Optional ByVal breaking_out_price_per_ft2 As Variant) As Variant
    OVS_THIN_ZONES_US_GET = Called("thin_zones", "us", "get", result, Array(survey, finish, minimum_in, bonded_minimum_in, grind_at_most_in, new_thickness_in, concrete_price_per_yd3, bonding_price_per_ft2, grinding_price_per_ft2, breaking_out_price_per_ft2))
End Function

' The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes and costs.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' minimum_mm: least thickness of an unbonded overlay (mm); more than 0 mm, at most 3048 mm
' bonded_minimum_mm: least thickness of a bonded part, at most the unbonded one (mm); more than 0 mm, at most 3048 mm; may be left out
' grind_at_most_mm: how deep the old slab may be ground (mm); at least 0 mm, at most 3048 mm; may be left out
' new_thickness_mm: thickness of the concrete where the old slab is broken out, down from the finish (mm); more than 0 mm, at most 3048 mm; may be left out
' concrete_price_per_m3: price of concrete (/m3); at least 0 /m3, at most 10000000 /m3; may be left out
' bonding_price_per_m2: price of bonding: milling, cleaning and slurry together (/m2); at least 0 /m2, at most 10000000 /m2; may be left out
' grinding_price_per_m2: price of grinding (/m2); at least 0 /m2, at most 10000000 /m2; may be left out
' breaking_out_price_per_m2: price of breaking out, hauling with it (/m2); at least 0 /m2, at most 10000000 /m2; may be left out
' Gives area_m2 (area of all that is thinner), lacking_m3 (volume all of it lacks to the minimum), left_out_m2 (area of zones under a square millimetre, not listed), raise_all_mm (rise of the whole finish that leaves no zone; none where there is none), raise_all_concrete_m3 (concrete it takes), raise_all_cost_money (what it costs), zone_by_zone_cost_money (all zones, each in the cheapest way without raising), said (all of it in a few sentences), zones (the zones), choices (the choices about each), corners (the corners of their polygons).
Public Function OVS_THIN_ZONES_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_mm As Variant, Optional ByVal bonded_minimum_mm As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal bonding_price_per_m2 As Variant, Optional ByVal grinding_price_per_m2 As Variant, Optional ByVal breaking_out_price_per_m2 As Variant) As Variant
    OVS_THIN_ZONES_SI = Called("thin_zones", "si", "value", "", Array(survey, finish, minimum_mm, bonded_minimum_mm, grind_at_most_mm, new_thickness_mm, concrete_price_per_m3, bonding_price_per_m2, grinding_price_per_m2, breaking_out_price_per_m2))
End Function

Public Function OVS_THIN_ZONES_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_mm As Variant, Optional ByVal bonded_minimum_mm As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal bonding_price_per_m2 As Variant, Optional ByVal grinding_price_per_m2 As Variant, Optional ByVal breaking_out_price_per_m2 As Variant) As Variant
    OVS_THIN_ZONES_SI_WHY = Called("thin_zones", "si", "why", "", Array(survey, finish, minimum_mm, bonded_minimum_mm, grind_at_most_mm, new_thickness_mm, concrete_price_per_m3, bonding_price_per_m2, grinding_price_per_m2, breaking_out_price_per_m2))
End Function

Public Function OVS_THIN_ZONES_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal minimum_mm As Variant, Optional ByVal bonded_minimum_mm As Variant, Optional ByVal grind_at_most_mm As Variant, Optional ByVal new_thickness_mm As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal bonding_price_per_m2 As Variant, Optional ByVal grinding_price_per_m2 As Variant, Optional ByVal breaking_out_price_per_m2 As Variant) As Variant
    OVS_THIN_ZONES_SI_GET = Called("thin_zones", "si", "get", result, Array(survey, finish, minimum_mm, bonded_minimum_mm, grind_at_most_mm, new_thickness_mm, concrete_price_per_m3, bonding_price_per_m2, grinding_price_per_m2, breaking_out_price_per_m2))
End Function

' Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' line_value: the places of the line, two or more; a range with the columns x_ft, y_ft
' spacing_ft: also tell the heights at whole steps of this from the start (ft); at least 0.00328083989501 ft, at most 3280.83989501 ft; may be left out
' Gives length_ft (length of the line), covered_ft (length over the work), net_ft2 (area between old slab and finish, high spots taken off), fill_ft2 (area where the finish is above the old slab), high_ft2 (area of old slab above the finish), mean_in (net area over covered length), least_in (least thickness along the line), least_distance_ft (where it is, along the line), least_x_ft (where it is, from the left), least_y_ft (where it is, from the front), greatest_in (greatest thickness along the line), greatest_distance_ft (where it is, along the line), greatest_x_ft (where it is, from the left), greatest_y_ft (where it is, from the front), stations (the stations), samples (the heights at whole steps of the spacing; none without one), gaps (the stretches outside the work).
Public Function OVS_SECTION_US(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_ft As Variant) As Variant
    OVS_SECTION_US = Called("section", "us", "value", "", Array(survey, finish, line_value, spacing_ft))
End Function

Public Function OVS_SECTION_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_ft As Variant) As Variant
    OVS_SECTION_US_WHY = Called("section", "us", "why", "", Array(survey, finish, line_value, spacing_ft))
End Function

Public Function OVS_SECTION_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_ft As Variant) As Variant
    OVS_SECTION_US_GET = Called("section", "us", "get", result, Array(survey, finish, line_value, spacing_ft))
End Function

' Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' line_value: the places of the line, two or more; a range with the columns x_m, y_m
' spacing_m: also tell the heights at whole steps of this from the start (m); at least 0.001 m, at most 1000 m; may be left out
' Gives length_m (length of the line), covered_m (length over the work), net_m2 (area between old slab and finish, high spots taken off), fill_m2 (area where the finish is above the old slab), high_m2 (area of old slab above the finish), mean_mm (net area over covered length), least_mm (least thickness along the line), least_distance_m (where it is, along the line), least_x_m (where it is, from the left), least_y_m (where it is, from the front), greatest_mm (greatest thickness along the line), greatest_distance_m (where it is, along the line), greatest_x_m (where it is, from the left), greatest_y_m (where it is, from the front), stations (the stations), samples (the heights at whole steps of the spacing; none without one), gaps (the stretches outside the work).
Public Function OVS_SECTION_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_m As Variant) As Variant
    OVS_SECTION_SI = Called("section", "si", "value", "", Array(survey, finish, line_value, spacing_m))
End Function

Public Function OVS_SECTION_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_m As Variant) As Variant
    OVS_SECTION_SI_WHY = Called("section", "si", "why", "", Array(survey, finish, line_value, spacing_m))
End Function

Public Function OVS_SECTION_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, Optional ByVal spacing_m As Variant) As Variant
    OVS_SECTION_SI_GET = Called("section", "si", "get", result, Array(survey, finish, line_value, spacing_m))
End Function

' Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the least concrete, with a bound that no place goes under.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' x_from_ft: the drain is no farther left than this, from the left (ft); at least -328083.989501 ft, at most 328083.989501 ft
' x_to_ft: and no farther right; the same as x_from leaves one line of places (ft); at least -328083.989501 ft, at most 328083.989501 ft
' y_from_ft: no farther to the front, from the front (ft); at least -328083.989501 ft, at most 328083.989501 ft
' y_to_ft: and no farther back (ft); at least -328083.989501 ft, at most 328083.989501 ft
' least_in: least thickness (in); at least 0 in, at most 120 in
' margin_in: margin on the least thickness (in); at least 0 in, at most 120 in; left out: 3/8 in, because reading, texture and strike-off
' fall_in_per_ft: least fall to the drain from every corner of the perimeter (in/ft); at least 0 in/ft, at most 12 in/ft; left out: 1/8 in/ft, because the least for a well-finished floor
' greatest_fall_in_per_ft: greatest fall, in whatever direction (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' concrete_price_per_yd3: price of concrete (/yd3); at least 0 /yd3, at most 7645548.57984 /yd3; may be left out
' close_percent: the search ends when the concrete is above the bound by no more than this share of it (%); at least 0.0001 %, at most 100 %; left out: 0.01 %, because less than a shovel to a truck
' most_places: the search ends too when so many places were tried; 5000 if not given; a whole number from 1 to 1000000; may be left out
' round_in: the heights of perimeter and drain are rounded to whole steps of this that keep the demands (in); at least 0 in, at most 12 in; may be left out
' datum_ft: the height the steps are counted from, usually the benchmark (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; left out: 0 ft, because the job datum
' Gives finish (the finish there, rounded if that was asked), x_ft (middle of the drain, from the left), y_ft (middle of the drain, from the front), perimeter_ft (height of that finish all along the outer edges), drain_elevation_ft (its height at the drain), concrete_yd3 (concrete of the unrounded finish, margin with it), bound_yd3 (no place in the rectangle takes less), gap_ratio (how far the concrete may be above the best, as a share of it), places (places at which the finish was solved), ended (why the search ended: as close as asked, or the cap on places), built_concrete_yd3 (concrete of the finish as rounded), cost_money (what that costs; none without a price).
Public Function OVS_DRAIN_PLACE_US(ByVal survey As Variant, ByVal x_from_ft As Variant, ByVal x_to_ft As Variant, ByVal y_from_ft As Variant, ByVal y_to_ft As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal greatest_fall_in_per_ft As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant) As Variant
    OVS_DRAIN_PLACE_US = Called("drain_place", "us", "value", "", Array(survey, x_from_ft, x_to_ft, y_from_ft, y_to_ft, least_in, margin_in, fall_in_per_ft, greatest_fall_in_per_ft, concrete_price_per_yd3, close_percent, most_places, round_in, datum_ft))
End Function

Public Function OVS_DRAIN_PLACE_US_WHY(ByVal survey As Variant, ByVal x_from_ft As Variant, ByVal x_to_ft As Variant, ByVal y_from_ft As Variant, ByVal y_to_ft As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal greatest_fall_in_per_ft As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant) As Variant
    OVS_DRAIN_PLACE_US_WHY = Called("drain_place", "us", "why", "", Array(survey, x_from_ft, x_to_ft, y_from_ft, y_to_ft, least_in, margin_in, fall_in_per_ft, greatest_fall_in_per_ft, concrete_price_per_yd3, close_percent, most_places, round_in, datum_ft))
End Function

Public Function OVS_DRAIN_PLACE_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal x_from_ft As Variant, ByVal x_to_ft As Variant, ByVal y_from_ft As Variant, ByVal y_to_ft As Variant, ByVal least_in As Variant, Optional ByVal margin_in As Variant, Optional ByVal fall_in_per_ft As Variant, Optional ByVal greatest_fall_in_per_ft As Variant, Optional ByVal concrete_price_per_yd3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_in As Variant, Optional ByVal datum_ft As Variant) As Variant
    OVS_DRAIN_PLACE_US_GET = Called("drain_place", "us", "get", result, Array(survey, x_from_ft, x_to_ft, y_from_ft, y_to_ft, least_in, margin_in, fall_in_per_ft, greatest_fall_in_per_ft, concrete_price_per_yd3, close_percent, most_places, round_in, datum_ft))
End Function

' Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the least concrete, with a bound that no place goes under.
' survey: the old slab with its outline; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' x_from_m: the drain is no farther left than this, from the left (m); at least -100000 m, at most 100000 m
' x_to_m: and no farther right; the same as x_from leaves one line of places (m); at least -100000 m, at most 100000 m
' y_from_m: no farther to the front, from the front (m); at least -100000 m, at most 100000 m
' y_to_m: and no farther back (m); at least -100000 m, at most 100000 m
' least_mm: least thickness (mm); at least 0 mm, at most 3048 mm
' margin_mm: margin on the least thickness (mm); at least 0 mm, at most 3048 mm; left out: 3/8 in, because reading, texture and strike-off
' fall_percent: least fall to the drain from every corner of the perimeter (%); at least 0 %, at most 100 %; left out: 1/8 in/ft, because the least for a well-finished floor
' greatest_fall_percent: greatest fall, in whatever direction (%); at least 0 %, at most 100 %; may be left out
' concrete_price_per_m3: price of concrete (/m3); at least 0 /m3, at most 10000000 /m3; may be left out
' close_percent: the search ends when the concrete is above the bound by no more than this share of it (%); at least 0.0001 %, at most 100 %; left out: 0.01 %, because less than a shovel to a truck
' most_places: the search ends too when so many places were tried; 5000 if not given; a whole number from 1 to 1000000; may be left out
' round_mm: the heights of perimeter and drain are rounded to whole steps of this that keep the demands (mm); at least 0 mm, at most 304.8 mm; may be left out
' datum_m: the height the steps are counted from, usually the benchmark (m); at least -10000 m, at most 10000 m; left out: 0 ft, because the job datum
' Gives finish (the finish there, rounded if that was asked), x_m (middle of the drain, from the left), y_m (middle of the drain, from the front), perimeter_m (height of that finish all along the outer edges), drain_elevation_m (its height at the drain), concrete_m3 (concrete of the unrounded finish, margin with it), bound_m3 (no place in the rectangle takes less), gap_ratio (how far the concrete may be above the best, as a share of it), places (places at which the finish was solved), ended (why the search ended: as close as asked, or the cap on places), built_concrete_m3 (concrete of the finish as rounded), cost_money (what that costs; none without a price).
Public Function OVS_DRAIN_PLACE_SI(ByVal survey As Variant, ByVal x_from_m As Variant, ByVal x_to_m As Variant, ByVal y_from_m As Variant, ByVal y_to_m As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal greatest_fall_percent As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant) As Variant
    OVS_DRAIN_PLACE_SI = Called("drain_place", "si", "value", "", Array(survey, x_from_m, x_to_m, y_from_m, y_to_m, least_mm, margin_mm, fall_percent, greatest_fall_percent, concrete_price_per_m3, close_percent, most_places, round_mm, datum_m))
End Function

Public Function OVS_DRAIN_PLACE_SI_WHY(ByVal survey As Variant, ByVal x_from_m As Variant, ByVal x_to_m As Variant, ByVal y_from_m As Variant, ByVal y_to_m As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal greatest_fall_percent As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant) As Variant
    OVS_DRAIN_PLACE_SI_WHY = Called("drain_place", "si", "why", "", Array(survey, x_from_m, x_to_m, y_from_m, y_to_m, least_mm, margin_mm, fall_percent, greatest_fall_percent, concrete_price_per_m3, close_percent, most_places, round_mm, datum_m))
End Function

Public Function OVS_DRAIN_PLACE_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal x_from_m As Variant, ByVal x_to_m As Variant, ByVal y_from_m As Variant, ByVal y_to_m As Variant, ByVal least_mm As Variant, Optional ByVal margin_mm As Variant, Optional ByVal fall_percent As Variant, Optional ByVal greatest_fall_percent As Variant, Optional ByVal concrete_price_per_m3 As Variant, Optional ByVal close_percent As Variant, Optional ByVal most_places As Variant, Optional ByVal round_mm As Variant, Optional ByVal datum_m As Variant) As Variant
    OVS_DRAIN_PLACE_SI_GET = Called("drain_place", "si", "get", result, Array(survey, x_from_m, x_to_m, y_from_m, y_to_m, least_mm, margin_mm, fall_percent, greatest_fall_percent, concrete_price_per_m3, close_percent, most_places, round_mm, datum_m))
End Function

' Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance below the line, and height over the old slab as the check.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' line_ft: elevation of the level line struck round the walls; without it no distances below it (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' sight_ft: elevation of the line of sight now; without it and without setups that of the survey's first set-up (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' setups: set-ups that marks are read from, instead of sight; every mark is told from each; a range with the columns [name], [sight_ft], [benchmark_ft], [rod_ft]; may be left out
' rod_length_ft: how long the rod is (ft); at least 1 ft, at most 32 ft; left out: 16 ft, because a telescoping rod, common practice, no source
' round_in: rods and distances below the line are marked in whole steps of this (in); at least 0.00393700787402 in, at most 4 in; left out: 1/8 in, because finer cannot be set out
' spacing_ft: greatest distance between stations at an edge or a rail (ft); at least 0.25 ft, at most 100 ft; left out: 4 ft, because the old slab is checked each 4 ft, common practice, no source
' points: places on edges that must have a mark; up to 6 in off they are taken to the edge; a range with the columns name, x_ft, y_ft; may be left out
' screed_length_ft: length of the screed that rides on the pads (ft); at least 2.5 ft, at most 50 ft; left out: 8 ft, because what two can pull by hand, common practice, no source
' pad_spacing_ft: greatest distance between pads; without it the screed less 2 ft (ft); at least 0.5 ft, at most 48 ft; may be left out
' pad_inset_ft: how far pads stay off the edges (ft); at least 0 ft, at most 10 ft; left out: 1 ft, because the marks at the edge serve there, common practice, no source
' forms: edges with a form; the others are walls with an isolation strip; a range with the columns edge; may be left out
' rails: screed rails; a range with the columns name, x_ft, y_ft; may be left out
' rail_offset_in: how far the tops of the rails stand above the floor (in); at least -12 in, at most 12 in; left out: 0 in, because the screed rides at the height of the floor
' start_edge: the edge that the walk starts with; the first where left out; a text; may be left out
' Gives marks (how many marks there are), sight_ft (elevation of the first line of sight), rod_on_line_ft (the rod on the reference line from there), greatest_departure_in (how far marks leave the floor by rounding, at most), stations (the marks at the edges), pads (the wet pads), forms (the tops of the forms), rails (the tops of the rails), rods (every mark from every set-up), edges (the edges), rips (what strips and forms are ripped to), lines (the lines along which planes meet), diagonals (lengths from corner to corner), csv (all marks as a CSV file), text (the list for the site).
Public Function OVS_MARKS_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_ft As Variant, Optional ByVal sight_ft As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal spacing_ft As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_ft As Variant, Optional ByVal pad_spacing_ft As Variant, Optional ByVal pad_inset_ft As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_in As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_US = Called("marks", "us", "value", "", Array(survey, finish, line_ft, sight_ft, setups, rod_length_ft, round_in, spacing_ft, points, screed_length_ft, pad_spacing_ft, pad_inset_ft, forms, rails, rail_offset_in, start_edge))
End Function

Public Function OVS_MARKS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_ft As Variant, Optional ByVal sight_ft As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal spacing_ft As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_ft As Variant, Optional ByVal pad_spacing_ft As Variant, Optional ByVal pad_inset_ft As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_in As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_US_WHY = Called("marks", "us", "why", "", Array(survey, finish, line_ft, sight_ft, setups, rod_length_ft, round_in, spacing_ft, points, screed_length_ft, pad_spacing_ft, pad_inset_ft, forms, rails, rail_offset_in, start_edge))
End Function

Public Function OVS_MARKS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_ft As Variant, Optional ByVal sight_ft As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_ft As Variant, Optional ByVal round_in As Variant, Optional ByVal spacing_ft As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_ft As Variant, Optional ByVal pad_spacing_ft As Variant, Optional ByVal pad_inset_ft As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_in As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_US_GET = Called("marks", "us", "get", result, Array(survey, finish, line_ft, sight_ft, setups, rod_length_ft, round_in, spacing_ft, points, screed_length_ft, pad_spacing_ft, pad_inset_ft, forms, rails, rail_offset_in, start_edge))
End Function

' Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance below the line, and height over the old slab as the check.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' line_m: elevation of the level line struck round the walls; without it no distances below it (m); at least -10000 m, at most 10000 m; may be left out
' sight_m: elevation of the line of sight now; without it and without setups that of the survey's first set-up (m); at least -10000 m, at most 10000 m; may be left out
' setups: set-ups that marks are read from, instead of sight; every mark is told from each; a range with the columns [name], [sight_m], [benchmark_m], [rod_m]; may be left out
' rod_length_m: how long the rod is (m); at least 0.3048 m, at most 9.7536 m; left out: 16 ft, because a telescoping rod, common practice, no source
' round_mm: rods and distances below the line are marked in whole steps of this (mm); at least 0.1 mm, at most 101.6 mm; left out: 1/8 in, because finer cannot be set out
' spacing_m: greatest distance between stations at an edge or a rail (m); at least 0.0762 m, at most 30.48 m; left out: 4 ft, because the old slab is checked each 4 ft, common practice, no source
' points: places on edges that must have a mark; up to 6 in off they are taken to the edge; a range with the columns name, x_m, y_m; may be left out
' screed_length_m: length of the screed that rides on the pads (m); at least 0.762 m, at most 15.24 m; left out: 8 ft, because what two can pull by hand, common practice, no source
' pad_spacing_m: greatest distance between pads; without it the screed less 2 ft (m); at least 0.1524 m, at most 14.6304 m; may be left out
' pad_inset_m: how far pads stay off the edges (m); at least 0 m, at most 3.048 m; left out: 1 ft, because the marks at the edge serve there, common practice, no source
' forms: edges with a form; the others are walls with an isolation strip; a range with the columns edge; may be left out
' rails: screed rails; a range with the columns name, x_m, y_m; may be left out
' rail_offset_mm: how far the tops of the rails stand above the floor (mm); at least -304.8 mm, at most 304.8 mm; left out: 0 in, because the screed rides at the height of the floor
' start_edge: the edge that the walk starts with; the first where left out; a text; may be left out
' Gives marks (how many marks there are), sight_m (elevation of the first line of sight), rod_on_line_m (the rod on the reference line from there), greatest_departure_mm (how far marks leave the floor by rounding, at most), stations (the marks at the edges), pads (the wet pads), forms (the tops of the forms), rails (the tops of the rails), rods (every mark from every set-up), edges (the edges), rips (what strips and forms are ripped to), lines (the lines along which planes meet), diagonals (lengths from corner to corner), csv (all marks as a CSV file), text (the list for the site).
Public Function OVS_MARKS_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_m As Variant, Optional ByVal sight_m As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_m As Variant, Optional ByVal round_mm As Variant, Optional ByVal spacing_m As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_m As Variant, Optional ByVal pad_spacing_m As Variant, Optional ByVal pad_inset_m As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_mm As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_SI = Called("marks", "si", "value", "", Array(survey, finish, line_m, sight_m, setups, rod_length_m, round_mm, spacing_m, points, screed_length_m, pad_spacing_m, pad_inset_m, forms, rails, rail_offset_mm, start_edge))
End Function

Public Function OVS_MARKS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_m As Variant, Optional ByVal sight_m As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_m As Variant, Optional ByVal round_mm As Variant, Optional ByVal spacing_m As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_m As Variant, Optional ByVal pad_spacing_m As Variant, Optional ByVal pad_inset_m As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_mm As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_SI_WHY = Called("marks", "si", "why", "", Array(survey, finish, line_m, sight_m, setups, rod_length_m, round_mm, spacing_m, points, screed_length_m, pad_spacing_m, pad_inset_m, forms, rails, rail_offset_mm, start_edge))
End Function

Public Function OVS_MARKS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal line_m As Variant, Optional ByVal sight_m As Variant, Optional ByVal setups As Variant, Optional ByVal rod_length_m As Variant, Optional ByVal round_mm As Variant, Optional ByVal spacing_m As Variant, Optional ByVal points As Variant, Optional ByVal screed_length_m As Variant, Optional ByVal pad_spacing_m As Variant, Optional ByVal pad_inset_m As Variant, Optional ByVal forms As Variant, Optional ByVal rails As Variant, Optional ByVal rail_offset_mm As Variant, Optional ByVal start_edge As Variant) As Variant
    OVS_MARKS_SI_GET = Called("marks", "si", "get", result, Array(survey, finish, line_m, sight_m, setups, rod_length_m, round_mm, spacing_m, points, screed_length_m, pad_spacing_m, pad_inset_m, forms, rails, rail_offset_mm, start_edge))
End Function

' The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
' planned_ft: rod on the benchmark when the marks were planned (ft); at least 0 ft, at most 32.8083989501 ft
' today_ft: rod on it today (ft); at least 0 ft, at most 32.8083989501 ft
' same_setup: yes where the level still stands where it stood, no after it was set up anew; no or yes
' marks: the rods of the marks; a range with the columns rod_ft; may be left out
' second_planned_ft: rod on a second benchmark when the marks were planned (ft); at least 0 ft, at most 32.8083989501 ft; may be left out
' second_today_ft: rod on the second benchmark today (ft); at least 0 ft, at most 32.8083989501 ft; may be left out
' tolerance_in: how far the benchmark may read off, and two benchmarks from one another (in); at least 0 in, at most 12 in; left out: 1/4 in, because more is no reading error, common practice, no source
' Gives difference_in (today less planned: what every rod moves by), second_difference_in (the same of the second benchmark), verdict (what follows), doubted (which benchmark is in doubt), today (the rods of the marks today; none where nobody should pour), said (a sentence for the crew).
Public Function OVS_MORNING_CHECK_US(ByVal planned_ft As Variant, ByVal today_ft As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_ft As Variant, Optional ByVal second_today_ft As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_MORNING_CHECK_US = Called("morning_check", "us", "value", "", Array(planned_ft, today_ft, same_setup, marks, second_planned_ft, second_today_ft, tolerance_in))
End Function

Public Function OVS_MORNING_CHECK_US_WHY(ByVal planned_ft As Variant, ByVal today_ft As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_ft As Variant, Optional ByVal second_today_ft As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_MORNING_CHECK_US_WHY = Called("morning_check", "us", "why", "", Array(planned_ft, today_ft, same_setup, marks, second_planned_ft, second_today_ft, tolerance_in))
End Function

Public Function OVS_MORNING_CHECK_US_GET(ByVal result As Variant, ByVal planned_ft As Variant, ByVal today_ft As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_ft As Variant, Optional ByVal second_today_ft As Variant, Optional ByVal tolerance_in As Variant) As Variant
    OVS_MORNING_CHECK_US_GET = Called("morning_check", "us", "get", result, Array(planned_ft, today_ft, same_setup, marks, second_planned_ft, second_today_ft, tolerance_in))
End Function

' The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
' planned_m: rod on the benchmark when the marks were planned (m); at least 0 m, at most 10 m
' today_m: rod on it today (m); at least 0 m, at most 10 m
' same_setup: yes where the level still stands where it stood, no after it was set up anew; no or yes
' marks: the rods of the marks; a range with the columns rod_m; may be left out
' second_planned_m: rod on a second benchmark when the marks were planned (m); at least 0 m, at most 10 m; may be left out
' second_today_m: rod on the second benchmark today (m); at least 0 m, at most 10 m; may be left out
' tolerance_mm: how far the benchmark may read off, and two benchmarks from one another (mm); at least 0 mm, at most 304.8 mm; left out: 1/4 in, because more is no reading error, common practice, no source
' Gives difference_mm (today less planned: what every rod moves by), second_difference_mm (the same of the second benchmark), verdict (what follows), doubted (which benchmark is in doubt), today (the rods of the marks today; none where nobody should pour), said (a sentence for the crew).
Public Function OVS_MORNING_CHECK_SI(ByVal planned_m As Variant, ByVal today_m As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_m As Variant, Optional ByVal second_today_m As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_MORNING_CHECK_SI = Called("morning_check", "si", "value", "", Array(planned_m, today_m, same_setup, marks, second_planned_m, second_today_m, tolerance_mm))
End Function

Public Function OVS_MORNING_CHECK_SI_WHY(ByVal planned_m As Variant, ByVal today_m As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_m As Variant, Optional ByVal second_today_m As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_MORNING_CHECK_SI_WHY = Called("morning_check", "si", "why", "", Array(planned_m, today_m, same_setup, marks, second_planned_m, second_today_m, tolerance_mm))
End Function

Public Function OVS_MORNING_CHECK_SI_GET(ByVal result As Variant, ByVal planned_m As Variant, ByVal today_m As Variant, ByVal same_setup As Variant, Optional ByVal marks As Variant, Optional ByVal second_planned_m As Variant, Optional ByVal second_today_m As Variant, Optional ByVal tolerance_mm As Variant) As Variant
    OVS_MORNING_CHECK_SI_GET = Called("morning_check", "si", "get", result, Array(planned_m, today_m, same_setup, marks, second_planned_m, second_today_m, tolerance_mm))
End Function

' The condition factor of an old slab by what is seen.
' condition: what the old slab looks like; sound, few cracks, still or badly cracked
' Gives factor_ratio (condition factor C).
Public Function OVS_CONDITION_FACTOR_US(ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_US = Called("condition_factor", "us", "value", "", Array(condition))
End Function

Public Function OVS_CONDITION_FACTOR_US_WHY(ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_US_WHY = Called("condition_factor", "us", "why", "", Array(condition))
End Function

Public Function OVS_CONDITION_FACTOR_US_GET(ByVal result As Variant, ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_US_GET = Called("condition_factor", "us", "get", result, Array(condition))
End Function

' The condition factor of an old slab by what is seen.
' condition: what the old slab looks like; sound, few cracks, still or badly cracked
' Gives factor_ratio (condition factor C).
Public Function OVS_CONDITION_FACTOR_SI(ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_SI = Called("condition_factor", "si", "value", "", Array(condition))
End Function

Public Function OVS_CONDITION_FACTOR_SI_WHY(ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_SI_WHY = Called("condition_factor", "si", "why", "", Array(condition))
End Function

Public Function OVS_CONDITION_FACTOR_SI_GET(ByVal result As Variant, ByVal condition As Variant) As Variant
    OVS_CONDITION_FACTOR_SI_GET = Called("condition_factor", "si", "get", result, Array(condition))
End Function

' How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what goes between old and new.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' used: what the floor is used for; people, cars, trucks, wash bay, jacks or heavier
' stone_in: largest stone of the mix (in); at least 0.125 in, at most 3 in; may be left out
' Gives least_in (least thickness anywhere), largest_stone_in (largest stone for that thickness), greatest_usual_in (usual at most; none where stress alone decides), between (what goes between old and new), means (what that means for the floor), rests_on (the basis that decides, by name), rules (every rule about it, with its source).
Public Function OVS_OVERLAY_MINIMUM_US(ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_in As Variant) As Variant
    OVS_OVERLAY_MINIMUM_US = Called("overlay_minimum", "us", "value", "", Array(bond, used, stone_in))
End Function

Public Function OVS_OVERLAY_MINIMUM_US_WHY(ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_in As Variant) As Variant
    OVS_OVERLAY_MINIMUM_US_WHY = Called("overlay_minimum", "us", "why", "", Array(bond, used, stone_in))
End Function

Public Function OVS_OVERLAY_MINIMUM_US_GET(ByVal result As Variant, ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_in As Variant) As Variant
    OVS_OVERLAY_MINIMUM_US_GET = Called("overlay_minimum", "us", "get", result, Array(bond, used, stone_in))
End Function

' How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what goes between old and new.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' used: what the floor is used for; people, cars, trucks, wash bay, jacks or heavier
' stone_mm: largest stone of the mix (mm); at least 3.175 mm, at most 76.2 mm; may be left out
' Gives least_mm (least thickness anywhere), largest_stone_mm (largest stone for that thickness), greatest_usual_mm (usual at most; none where stress alone decides), between (what goes between old and new), means (what that means for the floor), rests_on (the basis that decides, by name), rules (every rule about it, with its source).
Public Function OVS_OVERLAY_MINIMUM_SI(ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_mm As Variant) As Variant
    OVS_OVERLAY_MINIMUM_SI = Called("overlay_minimum", "si", "value", "", Array(bond, used, stone_mm))
End Function

Public Function OVS_OVERLAY_MINIMUM_SI_WHY(ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_mm As Variant) As Variant
    OVS_OVERLAY_MINIMUM_SI_WHY = Called("overlay_minimum", "si", "why", "", Array(bond, used, stone_mm))
End Function

Public Function OVS_OVERLAY_MINIMUM_SI_GET(ByVal result As Variant, ByVal bond As Variant, ByVal used As Variant, Optional ByVal stone_mm As Variant) As Variant
    OVS_OVERLAY_MINIMUM_SI_GET = Called("overlay_minimum", "si", "get", result, Array(bond, used, stone_mm))
End Function

' How rough the old surface must be for what goes on it, and the ways to it.
' covering: what goes on the old surface; sealer, thin film, high-build coating, self-levelling, polymer overlay, concrete overlay or bonded topping
' Gives least (smoothest profile), greatest (roughest profile), rests_on (its basis, by name), ways (the ways to these profiles).
Public Function OVS_SURFACE_PROFILE_US(ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_US = Called("surface_profile", "us", "value", "", Array(covering))
End Function

Public Function OVS_SURFACE_PROFILE_US_WHY(ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_US_WHY = Called("surface_profile", "us", "why", "", Array(covering))
End Function

Public Function OVS_SURFACE_PROFILE_US_GET(ByVal result As Variant, ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_US_GET = Called("surface_profile", "us", "get", result, Array(covering))
End Function

' How rough the old surface must be for what goes on it, and the ways to it.
' covering: what goes on the old surface; sealer, thin film, high-build coating, self-levelling, polymer overlay, concrete overlay or bonded topping
' Gives least (smoothest profile), greatest (roughest profile), rests_on (its basis, by name), ways (the ways to these profiles).
Public Function OVS_SURFACE_PROFILE_SI(ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_SI = Called("surface_profile", "si", "value", "", Array(covering))
End Function

Public Function OVS_SURFACE_PROFILE_SI_WHY(ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_SI_WHY = Called("surface_profile", "si", "why", "", Array(covering))
End Function

Public Function OVS_SURFACE_PROFILE_SI_GET(ByVal result As Variant, ByVal covering As Variant) As Variant
    OVS_SURFACE_PROFILE_SI_GET = Called("surface_profile", "si", "get", result, Array(covering))
End Function

' The pull-off strength of a core, held against what the project's specification asks.
' load_lbf: load at which it broke (lbf); more than 0 lbf, at most 22480.89431 lbf
' diameter_in: diameter of the core, usually 2 in (in); at least 1 in, at most 6 in
' broke: where it broke; old concrete, between, overlay or glue
' asked_psi: strength that is asked for (psi); more than 0 psi, at most 1450.3773773 psi; left out: 200 psi, because often asked; the project's specification decides
' Gives strength_psi (pull-off strength), verdict (what the test says).
Public Function OVS_PULL_OFF_US(ByVal load_lbf As Variant, ByVal diameter_in As Variant, ByVal broke As Variant, Optional ByVal asked_psi As Variant) As Variant
    OVS_PULL_OFF_US = Called("pull_off", "us", "value", "", Array(load_lbf, diameter_in, broke, asked_psi))
End Function

Public Function OVS_PULL_OFF_US_WHY(ByVal load_lbf As Variant, ByVal diameter_in As Variant, ByVal broke As Variant, Optional ByVal asked_psi As Variant) As Variant
    OVS_PULL_OFF_US_WHY = Called("pull_off", "us", "why", "", Array(load_lbf, diameter_in, broke, asked_psi))
End Function

Public Function OVS_PULL_OFF_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal diameter_in As Variant, ByVal broke As Variant, Optional ByVal asked_psi As Variant) As Variant
    OVS_PULL_OFF_US_GET = Called("pull_off", "us", "get", result, Array(load_lbf, diameter_in, broke, asked_psi))
End Function

' The pull-off strength of a core, held against what the project's specification asks.
' load_kn: load at which it broke (kN); more than 0 kN, at most 100 kN
' diameter_mm: diameter of the core, usually 2 in (mm); at least 25.4 mm, at most 152.4 mm
' broke: where it broke; old concrete, between, overlay or glue
' asked_mpa: strength that is asked for (MPa); more than 0 MPa, at most 10 MPa; left out: 200 psi, because often asked; the project's specification decides
' Gives strength_mpa (pull-off strength), verdict (what the test says).
Public Function OVS_PULL_OFF_SI(ByVal load_kn As Variant, ByVal diameter_mm As Variant, ByVal broke As Variant, Optional ByVal asked_mpa As Variant) As Variant
    OVS_PULL_OFF_SI = Called("pull_off", "si", "value", "", Array(load_kn, diameter_mm, broke, asked_mpa))
End Function

Public Function OVS_PULL_OFF_SI_WHY(ByVal load_kn As Variant, ByVal diameter_mm As Variant, ByVal broke As Variant, Optional ByVal asked_mpa As Variant) As Variant
    OVS_PULL_OFF_SI_WHY = Called("pull_off", "si", "why", "", Array(load_kn, diameter_mm, broke, asked_mpa))
End Function

Public Function OVS_PULL_OFF_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal diameter_mm As Variant, ByVal broke As Variant, Optional ByVal asked_mpa As Variant) As Variant
    OVS_PULL_OFF_SI_GET = Called("pull_off", "si", "get", result, Array(load_kn, diameter_mm, broke, asked_mpa))
End Function

' The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is enough.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' required_new_in: single slab that the new concrete would need on this ground (in); more than 0 in, at most 78.7401574803 in
' required_old_in: a single slab of the old concrete would need so much (in); more than 0 in, at most 78.7401574803 in
' old_slab_in: thickness of the old slab (in); more than 0 in, at most 78.7401574803 in
' condition_ratio: condition factor C of the old slab; 1 for a bonded overlay (1); at least 0.1 1, at most 1 1
' Gives overlay_in (thickness of the overlay).
Public Function OVS_OVERLAY_REQUIRED_US(ByVal bond As Variant, ByVal required_new_in As Variant, ByVal required_old_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_US = Called("overlay_required", "us", "value", "", Array(bond, required_new_in, required_old_in, old_slab_in, condition_ratio))
End Function

Public Function OVS_OVERLAY_REQUIRED_US_WHY(ByVal bond As Variant, ByVal required_new_in As Variant, ByVal required_old_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_US_WHY = Called("overlay_required", "us", "why", "", Array(bond, required_new_in, required_old_in, old_slab_in, condition_ratio))
End Function

Public Function OVS_OVERLAY_REQUIRED_US_GET(ByVal result As Variant, ByVal bond As Variant, ByVal required_new_in As Variant, ByVal required_old_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_US_GET = Called("overlay_required", "us", "get", result, Array(bond, required_new_in, required_old_in, old_slab_in, condition_ratio))
End Function

' The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is enough.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' required_new_mm: single slab that the new concrete would need on this ground (mm); more than 0 mm, at most 2000 mm
' required_old_mm: a single slab of the old concrete would need so much (mm); more than 0 mm, at most 2000 mm
' old_slab_mm: thickness of the old slab (mm); more than 0 mm, at most 2000 mm
' condition_ratio: condition factor C of the old slab; 1 for a bonded overlay (1); at least 0.1 1, at most 1 1
' Gives overlay_mm (thickness of the overlay).
Public Function OVS_OVERLAY_REQUIRED_SI(ByVal bond As Variant, ByVal required_new_mm As Variant, ByVal required_old_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_SI = Called("overlay_required", "si", "value", "", Array(bond, required_new_mm, required_old_mm, old_slab_mm, condition_ratio))
End Function

Public Function OVS_OVERLAY_REQUIRED_SI_WHY(ByVal bond As Variant, ByVal required_new_mm As Variant, ByVal required_old_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_SI_WHY = Called("overlay_required", "si", "why", "", Array(bond, required_new_mm, required_old_mm, old_slab_mm, condition_ratio))
End Function

Public Function OVS_OVERLAY_REQUIRED_SI_GET(ByVal result As Variant, ByVal bond As Variant, ByVal required_new_mm As Variant, ByVal required_old_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_OVERLAY_REQUIRED_SI_GET = Called("overlay_required", "si", "get", result, Array(bond, required_new_mm, required_old_mm, old_slab_mm, condition_ratio))
End Function

' The single slab that an overlay and the old slab under it are worth together.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' overlay_in: thickness of the overlay (in); more than 0 in, at most 78.7401574803 in
' old_slab_in: the old slab's thickness (in); more than 0 in, at most 78.7401574803 in
' condition_ratio: condition factor C of the old slab; 1 for a bonded overlay (1); at least 0.1 1, at most 1 1
' Gives equivalent_in (the single slab).
Public Function OVS_SLAB_EQUIVALENT_US(ByVal bond As Variant, ByVal overlay_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_US = Called("slab_equivalent", "us", "value", "", Array(bond, overlay_in, old_slab_in, condition_ratio))
End Function

Public Function OVS_SLAB_EQUIVALENT_US_WHY(ByVal bond As Variant, ByVal overlay_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_US_WHY = Called("slab_equivalent", "us", "why", "", Array(bond, overlay_in, old_slab_in, condition_ratio))
End Function

Public Function OVS_SLAB_EQUIVALENT_US_GET(ByVal result As Variant, ByVal bond As Variant, ByVal overlay_in As Variant, ByVal old_slab_in As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_US_GET = Called("slab_equivalent", "us", "get", result, Array(bond, overlay_in, old_slab_in, condition_ratio))
End Function

' The single slab that an overlay and the old slab under it are worth together.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' overlay_mm: thickness of the overlay (mm); more than 0 mm, at most 2000 mm
' old_slab_mm: the old slab's thickness (mm); more than 0 mm, at most 2000 mm
' condition_ratio: condition factor C of the old slab; 1 for a bonded overlay (1); at least 0.1 1, at most 1 1
' Gives equivalent_mm (the single slab).
Public Function OVS_SLAB_EQUIVALENT_SI(ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_SI = Called("slab_equivalent", "si", "value", "", Array(bond, overlay_mm, old_slab_mm, condition_ratio))
End Function

Public Function OVS_SLAB_EQUIVALENT_SI_WHY(ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_SI_WHY = Called("slab_equivalent", "si", "why", "", Array(bond, overlay_mm, old_slab_mm, condition_ratio))
End Function

Public Function OVS_SLAB_EQUIVALENT_SI_GET(ByVal result As Variant, ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal old_slab_mm As Variant, ByVal condition_ratio As Variant) As Variant
    OVS_SLAB_EQUIVALENT_SI_GET = Called("slab_equivalent", "si", "get", result, Array(bond, overlay_mm, old_slab_mm, condition_ratio))
End Function

' What an old slab is worth under a bonded overlay, and the overlay that follows.
' required_in: single slab required for the traffic to come (in); more than 0 in, at most 78.7401574803 in
' old_slab_in: thickness of the old slab (in); more than 0 in, at most 78.7401574803 in
' joints_ratio: factor for joints and cracks left open; 1 where all are mended (1); at least 0.3 1, at most 1 1
' durability_ratio: durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling (1); at least 0.3 1, at most 1 1
' fatigue_ratio: fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very many (1); at least 0.3 1, at most 1 1
' Gives effective_in (what the old slab is worth), overlay_in (thickness of the overlay).
Public Function OVS_OVERLAY_EFFECTIVE_BONDED_US(ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    Dim x(0 To 4) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio), "ddddd", x) Then
        status = dll_overlay_effective_bonded_us(x(0), x(1), x(2), x(3), x(4), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_OVERLAY_EFFECTIVE_BONDED_US = SideBySide(Array(y1, y2)) Else OVS_OVERLAY_EFFECTIVE_BONDED_US = ErrorFor(status)
        Exit Function
    End If
    OVS_OVERLAY_EFFECTIVE_BONDED_US = Called("overlay_effective_bonded", "us", "value", "", Array(required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_BONDED_US_WHY(ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_BONDED_US_WHY = Called("overlay_effective_bonded", "us", "why", "", Array(required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_BONDED_US_GET(ByVal result As Variant, ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_BONDED_US_GET = Called("overlay_effective_bonded", "us", "get", result, Array(required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio))
End Function

' What an old slab is worth under a bonded overlay, and the overlay that follows.
' required_mm: single slab required for the traffic to come (mm); more than 0 mm, at most 2000 mm
' old_slab_mm: thickness of the old slab (mm); more than 0 mm, at most 2000 mm
' joints_ratio: factor for joints and cracks left open; 1 where all are mended (1); at least 0.3 1, at most 1 1
' durability_ratio: durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling (1); at least 0.3 1, at most 1 1
' fatigue_ratio: fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very many (1); at least 0.3 1, at most 1 1
' Gives effective_mm (what the old slab is worth), overlay_mm (thickness of the overlay).
Public Function OVS_OVERLAY_EFFECTIVE_BONDED_SI(ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    Dim x(0 To 4) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio), "ddddd", x) Then
        status = dll_overlay_effective_bonded_si(x(0), x(1), x(2), x(3), x(4), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_OVERLAY_EFFECTIVE_BONDED_SI = SideBySide(Array(y1, y2)) Else OVS_OVERLAY_EFFECTIVE_BONDED_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_OVERLAY_EFFECTIVE_BONDED_SI = Called("overlay_effective_bonded", "si", "value", "", Array(required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_BONDED_SI_WHY(ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_BONDED_SI_WHY = Called("overlay_effective_bonded", "si", "why", "", Array(required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_BONDED_SI_GET(ByVal result As Variant, ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant, ByVal durability_ratio As Variant, ByVal fatigue_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_BONDED_SI_GET = Called("overlay_effective_bonded", "si", "get", result, Array(required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio))
End Function

' What an old slab is worth under an unbonded overlay, and the overlay that follows.
' required_in: single slab required for the traffic to come (in); more than 0 in, at most 78.7401574803 in
' old_slab_in: thickness of the old slab (in); more than 0 in, at most 78.7401574803 in
' joints_ratio: factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile (1); at least 0.3 1, at most 1 1
' Gives effective_in (what the old slab is worth), overlay_in (thickness of the overlay).
Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_US(ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(required_in, old_slab_in, joints_ratio), "ddd", x) Then
        status = dll_overlay_effective_unbonded_us(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_OVERLAY_EFFECTIVE_UNBONDED_US = SideBySide(Array(y1, y2)) Else OVS_OVERLAY_EFFECTIVE_UNBONDED_US = ErrorFor(status)
        Exit Function
    End If
    OVS_OVERLAY_EFFECTIVE_UNBONDED_US = Called("overlay_effective_unbonded", "us", "value", "", Array(required_in, old_slab_in, joints_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_US_WHY(ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_UNBONDED_US_WHY = Called("overlay_effective_unbonded", "us", "why", "", Array(required_in, old_slab_in, joints_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_US_GET(ByVal result As Variant, ByVal required_in As Variant, ByVal old_slab_in As Variant, ByVal joints_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_UNBONDED_US_GET = Called("overlay_effective_unbonded", "us", "get", result, Array(required_in, old_slab_in, joints_ratio))
End Function

' What an old slab is worth under an unbonded overlay, and the overlay that follows.
' required_mm: single slab required for the traffic to come (mm); more than 0 mm, at most 2000 mm
' old_slab_mm: thickness of the old slab (mm); more than 0 mm, at most 2000 mm
' joints_ratio: factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile (1); at least 0.3 1, at most 1 1
' Gives effective_mm (what the old slab is worth), overlay_mm (thickness of the overlay).
Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_SI(ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(required_mm, old_slab_mm, joints_ratio), "ddd", x) Then
        status = dll_overlay_effective_unbonded_si(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_OVERLAY_EFFECTIVE_UNBONDED_SI = SideBySide(Array(y1, y2)) Else OVS_OVERLAY_EFFECTIVE_UNBONDED_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_OVERLAY_EFFECTIVE_UNBONDED_SI = Called("overlay_effective_unbonded", "si", "value", "", Array(required_mm, old_slab_mm, joints_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_SI_WHY(ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_UNBONDED_SI_WHY = Called("overlay_effective_unbonded", "si", "why", "", Array(required_mm, old_slab_mm, joints_ratio))
End Function

Public Function OVS_OVERLAY_EFFECTIVE_UNBONDED_SI_GET(ByVal result As Variant, ByVal required_mm As Variant, ByVal old_slab_mm As Variant, ByVal joints_ratio As Variant) As Variant
    OVS_OVERLAY_EFFECTIVE_UNBONDED_SI_GET = Called("overlay_effective_unbonded", "si", "get", result, Array(required_mm, old_slab_mm, joints_ratio))
End Function

' The modulus of elasticity of normal-weight concrete from its compressive strength.
' strength_psi: compressive strength f'c (psi); at least 1000 psi, at most 15000 psi
' Gives modulus_psi (modulus of elasticity).
Public Function OVS_CONCRETE_MODULUS_US(ByVal strength_psi As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(strength_psi), "d", x) Then
        status = dll_concrete_modulus_us(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_CONCRETE_MODULUS_US = y1 Else OVS_CONCRETE_MODULUS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CONCRETE_MODULUS_US = Called("concrete_modulus", "us", "value", "", Array(strength_psi))
End Function

Public Function OVS_CONCRETE_MODULUS_US_WHY(ByVal strength_psi As Variant) As Variant
    OVS_CONCRETE_MODULUS_US_WHY = Called("concrete_modulus", "us", "why", "", Array(strength_psi))
End Function

Public Function OVS_CONCRETE_MODULUS_US_GET(ByVal result As Variant, ByVal strength_psi As Variant) As Variant
    OVS_CONCRETE_MODULUS_US_GET = Called("concrete_modulus", "us", "get", result, Array(strength_psi))
End Function

' The modulus of elasticity of normal-weight concrete from its compressive strength.
' strength_mpa: compressive strength f'c (MPa); at least 6.89475729317 MPa, at most 103.421359398 MPa
' Gives modulus_mpa (modulus of elasticity).
Public Function OVS_CONCRETE_MODULUS_SI(ByVal strength_mpa As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(strength_mpa), "d", x) Then
        status = dll_concrete_modulus_si(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_CONCRETE_MODULUS_SI = y1 Else OVS_CONCRETE_MODULUS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CONCRETE_MODULUS_SI = Called("concrete_modulus", "si", "value", "", Array(strength_mpa))
End Function

Public Function OVS_CONCRETE_MODULUS_SI_WHY(ByVal strength_mpa As Variant) As Variant
    OVS_CONCRETE_MODULUS_SI_WHY = Called("concrete_modulus", "si", "why", "", Array(strength_mpa))
End Function

Public Function OVS_CONCRETE_MODULUS_SI_GET(ByVal result As Variant, ByVal strength_mpa As Variant) As Variant
    OVS_CONCRETE_MODULUS_SI_GET = Called("concrete_modulus", "si", "get", result, Array(strength_mpa))
End Function

' The modulus of elasticity of concrete from its compressive strength and unit weight.
' strength_psi: compressive strength f'c (psi); at least 1000 psi, at most 15000 psi
' density_lb_per_ft3: unit weight (lb/ft3); at least 90 lb/ft3, at most 160 lb/ft3
' Gives modulus_psi (modulus of elasticity).
Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_US(ByVal strength_psi As Variant, ByVal density_lb_per_ft3 As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(strength_psi, density_lb_per_ft3), "dd", x) Then
        status = dll_concrete_modulus_by_density_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CONCRETE_MODULUS_BY_DENSITY_US = y1 Else OVS_CONCRETE_MODULUS_BY_DENSITY_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CONCRETE_MODULUS_BY_DENSITY_US = Called("concrete_modulus_by_density", "us", "value", "", Array(strength_psi, density_lb_per_ft3))
End Function

Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_US_WHY(ByVal strength_psi As Variant, ByVal density_lb_per_ft3 As Variant) As Variant
    OVS_CONCRETE_MODULUS_BY_DENSITY_US_WHY = Called("concrete_modulus_by_density", "us", "why", "", Array(strength_psi, density_lb_per_ft3))
End Function

Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_US_GET(ByVal result As Variant, ByVal strength_psi As Variant, ByVal density_lb_per_ft3 As Variant) As Variant
    OVS_CONCRETE_MODULUS_BY_DENSITY_US_GET = Called("concrete_modulus_by_density", "us", "get", result, Array(strength_psi, density_lb_per_ft3))
End Function

' The modulus of elasticity of concrete from its compressive strength and unit weight.
' strength_mpa: compressive strength f'c (MPa); at least 6.89475729317 MPa, at most 103.421359398 MPa
' density_kg_per_m3: unit weight (kg/m3); at least 1441.66170366 kg/m3, at most 2562.95413983 kg/m3
' Gives modulus_mpa (modulus of elasticity).
Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_SI(ByVal strength_mpa As Variant, ByVal density_kg_per_m3 As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(strength_mpa, density_kg_per_m3), "dd", x) Then
        status = dll_concrete_modulus_by_density_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CONCRETE_MODULUS_BY_DENSITY_SI = y1 Else OVS_CONCRETE_MODULUS_BY_DENSITY_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CONCRETE_MODULUS_BY_DENSITY_SI = Called("concrete_modulus_by_density", "si", "value", "", Array(strength_mpa, density_kg_per_m3))
End Function

Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_SI_WHY(ByVal strength_mpa As Variant, ByVal density_kg_per_m3 As Variant) As Variant
    OVS_CONCRETE_MODULUS_BY_DENSITY_SI_WHY = Called("concrete_modulus_by_density", "si", "why", "", Array(strength_mpa, density_kg_per_m3))
End Function

Public Function OVS_CONCRETE_MODULUS_BY_DENSITY_SI_GET(ByVal result As Variant, ByVal strength_mpa As Variant, ByVal density_kg_per_m3 As Variant) As Variant
    OVS_CONCRETE_MODULUS_BY_DENSITY_SI_GET = Called("concrete_modulus_by_density", "si", "get", result, Array(strength_mpa, density_kg_per_m3))
End Function

' The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the design of floors on ground.
' strength_psi: compressive strength f'c (psi); at least 1000 psi, at most 15000 psi
' formula: which formula; building code, 7.5 or floor design, 9
' Gives rupture_psi (modulus of rupture).
Public Function OVS_CONCRETE_RUPTURE_US(ByVal strength_psi As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_US = Called("concrete_rupture", "us", "value", "", Array(strength_psi, formula))
End Function

Public Function OVS_CONCRETE_RUPTURE_US_WHY(ByVal strength_psi As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_US_WHY = Called("concrete_rupture", "us", "why", "", Array(strength_psi, formula))
End Function

Public Function OVS_CONCRETE_RUPTURE_US_GET(ByVal result As Variant, ByVal strength_psi As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_US_GET = Called("concrete_rupture", "us", "get", result, Array(strength_psi, formula))
End Function

' The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the design of floors on ground.
' strength_mpa: compressive strength f'c (MPa); at least 6.89475729317 MPa, at most 103.421359398 MPa
' formula: which formula; building code, 7.5 or floor design, 9
' Gives rupture_mpa (modulus of rupture).
Public Function OVS_CONCRETE_RUPTURE_SI(ByVal strength_mpa As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_SI = Called("concrete_rupture", "si", "value", "", Array(strength_mpa, formula))
End Function

Public Function OVS_CONCRETE_RUPTURE_SI_WHY(ByVal strength_mpa As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_SI_WHY = Called("concrete_rupture", "si", "why", "", Array(strength_mpa, formula))
End Function

Public Function OVS_CONCRETE_RUPTURE_SI_GET(ByVal result As Variant, ByVal strength_mpa As Variant, ByVal formula As Variant) As Variant
    OVS_CONCRETE_RUPTURE_SI_GET = Called("concrete_rupture", "si", "get", result, Array(strength_mpa, formula))
End Function

' The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
' bearing_ratio_percent: California bearing ratio (%); at least 2 %, at most 100 %
' source: which correlation; FAA, Packard, IRC:58 or lowest
' Gives subgrade_pci (modulus of subgrade reaction k).
Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_US(ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_US = Called("subgrade_from_bearing_ratio", "us", "value", "", Array(bearing_ratio_percent, source))
End Function

Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_US_WHY(ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_US_WHY = Called("subgrade_from_bearing_ratio", "us", "why", "", Array(bearing_ratio_percent, source))
End Function

Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_US_GET(ByVal result As Variant, ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_US_GET = Called("subgrade_from_bearing_ratio", "us", "get", result, Array(bearing_ratio_percent, source))
End Function

' The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
' bearing_ratio_percent: California bearing ratio (%); at least 2 %, at most 100 %
' source: which correlation; FAA, Packard, IRC:58 or lowest
' Gives subgrade_mpa_per_m (modulus of subgrade reaction k).
Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_SI(ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_SI = Called("subgrade_from_bearing_ratio", "si", "value", "", Array(bearing_ratio_percent, source))
End Function

Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_SI_WHY(ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_SI_WHY = Called("subgrade_from_bearing_ratio", "si", "why", "", Array(bearing_ratio_percent, source))
End Function

Public Function OVS_SUBGRADE_FROM_BEARING_RATIO_SI_GET(ByVal result As Variant, ByVal bearing_ratio_percent As Variant, ByVal source As Variant) As Variant
    OVS_SUBGRADE_FROM_BEARING_RATIO_SI_GET = Called("subgrade_from_bearing_ratio", "si", "get", result, Array(bearing_ratio_percent, source))
End Function

' The modulus of subgrade reaction from the resilient modulus of the soil.
' resilient_psi: resilient modulus of the soil (psi); at least 500 psi, at most 38000 psi
' Gives subgrade_pci (modulus of subgrade reaction k).
Public Function OVS_SUBGRADE_FROM_RESILIENT_US(ByVal resilient_psi As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(resilient_psi), "d", x) Then
        status = dll_subgrade_from_resilient_us(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_SUBGRADE_FROM_RESILIENT_US = y1 Else OVS_SUBGRADE_FROM_RESILIENT_US = ErrorFor(status)
        Exit Function
    End If
    OVS_SUBGRADE_FROM_RESILIENT_US = Called("subgrade_from_resilient", "us", "value", "", Array(resilient_psi))
End Function

Public Function OVS_SUBGRADE_FROM_RESILIENT_US_WHY(ByVal resilient_psi As Variant) As Variant
    OVS_SUBGRADE_FROM_RESILIENT_US_WHY = Called("subgrade_from_resilient", "us", "why", "", Array(resilient_psi))
End Function

Public Function OVS_SUBGRADE_FROM_RESILIENT_US_GET(ByVal result As Variant, ByVal resilient_psi As Variant) As Variant
    OVS_SUBGRADE_FROM_RESILIENT_US_GET = Called("subgrade_from_resilient", "us", "get", result, Array(resilient_psi))
End Function

' The modulus of subgrade reaction from the resilient modulus of the soil.
' resilient_mpa: resilient modulus of the soil (MPa); at least 3.44737864658 MPa, at most 262.00077714 MPa
' Gives subgrade_mpa_per_m (modulus of subgrade reaction k).
Public Function OVS_SUBGRADE_FROM_RESILIENT_SI(ByVal resilient_mpa As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(resilient_mpa), "d", x) Then
        status = dll_subgrade_from_resilient_si(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_SUBGRADE_FROM_RESILIENT_SI = y1 Else OVS_SUBGRADE_FROM_RESILIENT_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_SUBGRADE_FROM_RESILIENT_SI = Called("subgrade_from_resilient", "si", "value", "", Array(resilient_mpa))
End Function

Public Function OVS_SUBGRADE_FROM_RESILIENT_SI_WHY(ByVal resilient_mpa As Variant) As Variant
    OVS_SUBGRADE_FROM_RESILIENT_SI_WHY = Called("subgrade_from_resilient", "si", "why", "", Array(resilient_mpa))
End Function

Public Function OVS_SUBGRADE_FROM_RESILIENT_SI_GET(ByVal result As Variant, ByVal resilient_mpa As Variant) As Variant
    OVS_SUBGRADE_FROM_RESILIENT_SI_GET = Called("subgrade_from_resilient", "si", "get", result, Array(resilient_mpa))
End Function

' The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
' soil: what the slab rests on; soft, medium, firm, silt and clay, sand with silt or clay, clean sand and gravel, cement-treated subbase or old slab
' Gives least_pci (lower end: the one to take), greatest_pci (upper end).
Public Function OVS_SUBGRADE_FROM_SOIL_US(ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_US = Called("subgrade_from_soil", "us", "value", "", Array(soil))
End Function

Public Function OVS_SUBGRADE_FROM_SOIL_US_WHY(ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_US_WHY = Called("subgrade_from_soil", "us", "why", "", Array(soil))
End Function

Public Function OVS_SUBGRADE_FROM_SOIL_US_GET(ByVal result As Variant, ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_US_GET = Called("subgrade_from_soil", "us", "get", result, Array(soil))
End Function

' The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
' soil: what the slab rests on; soft, medium, firm, silt and clay, sand with silt or clay, clean sand and gravel, cement-treated subbase or old slab
' Gives least_mpa_per_m (lower end: the one to take), greatest_mpa_per_m (upper end).
Public Function OVS_SUBGRADE_FROM_SOIL_SI(ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_SI = Called("subgrade_from_soil", "si", "value", "", Array(soil))
End Function

Public Function OVS_SUBGRADE_FROM_SOIL_SI_WHY(ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_SI_WHY = Called("subgrade_from_soil", "si", "why", "", Array(soil))
End Function

Public Function OVS_SUBGRADE_FROM_SOIL_SI_GET(ByVal result As Variant, ByVal soil As Variant) As Variant
    OVS_SUBGRADE_FROM_SOIL_SI_GET = Called("subgrade_from_soil", "si", "get", result, Array(soil))
End Function

' The modulus of subgrade reaction on top of a subbase.
' subgrade_pci: modulus of subgrade reaction under the subbase (pci); at least 50 pci, at most 300 pci
' thickness_in: thickness of the subbase (in); at least 4 in, at most 12 in
' kind: what the subbase is; granular or cement-treated
' Gives top_pci (modulus of subgrade reaction on top).
Public Function OVS_SUBGRADE_WITH_SUBBASE_US(ByVal subgrade_pci As Variant, ByVal thickness_in As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_US = Called("subgrade_with_subbase", "us", "value", "", Array(subgrade_pci, thickness_in, kind))
End Function

Public Function OVS_SUBGRADE_WITH_SUBBASE_US_WHY(ByVal subgrade_pci As Variant, ByVal thickness_in As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_US_WHY = Called("subgrade_with_subbase", "us", "why", "", Array(subgrade_pci, thickness_in, kind))
End Function

Public Function OVS_SUBGRADE_WITH_SUBBASE_US_GET(ByVal result As Variant, ByVal subgrade_pci As Variant, ByVal thickness_in As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_US_GET = Called("subgrade_with_subbase", "us", "get", result, Array(subgrade_pci, thickness_in, kind))
End Function

' The modulus of subgrade reaction on top of a subbase.
' subgrade_mpa_per_m: modulus of subgrade reaction under the subbase (MPa/m); at least 13.5723568763 MPa/m, at most 81.4341412579 MPa/m
' thickness_mm: thickness of the subbase (mm); at least 101.6 mm, at most 304.8 mm
' kind: what the subbase is; granular or cement-treated
' Gives top_mpa_per_m (modulus of subgrade reaction on top).
Public Function OVS_SUBGRADE_WITH_SUBBASE_SI(ByVal subgrade_mpa_per_m As Variant, ByVal thickness_mm As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_SI = Called("subgrade_with_subbase", "si", "value", "", Array(subgrade_mpa_per_m, thickness_mm, kind))
End Function

Public Function OVS_SUBGRADE_WITH_SUBBASE_SI_WHY(ByVal subgrade_mpa_per_m As Variant, ByVal thickness_mm As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_SI_WHY = Called("subgrade_with_subbase", "si", "why", "", Array(subgrade_mpa_per_m, thickness_mm, kind))
End Function

Public Function OVS_SUBGRADE_WITH_SUBBASE_SI_GET(ByVal result As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal thickness_mm As Variant, ByVal kind As Variant) As Variant
    OVS_SUBGRADE_WITH_SUBBASE_SI_GET = Called("subgrade_with_subbase", "si", "get", result, Array(subgrade_mpa_per_m, thickness_mm, kind))
End Function

' The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' Gives stiffness_in (radius of relative stiffness).
Public Function OVS_STIFFNESS_RADIUS_US(ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_in, modulus_psi, poisson_ratio, subgrade_pci), "dddd", x) Then
        status = dll_stiffness_radius_us(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_STIFFNESS_RADIUS_US = y1 Else OVS_STIFFNESS_RADIUS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_STIFFNESS_RADIUS_US = Called("stiffness_radius", "us", "value", "", Array(thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

Public Function OVS_STIFFNESS_RADIUS_US_WHY(ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_STIFFNESS_RADIUS_US_WHY = Called("stiffness_radius", "us", "why", "", Array(thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

Public Function OVS_STIFFNESS_RADIUS_US_GET(ByVal result As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_STIFFNESS_RADIUS_US_GET = Called("stiffness_radius", "us", "get", result, Array(thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

' The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' Gives stiffness_mm (radius of relative stiffness).
Public Function OVS_STIFFNESS_RADIUS_SI(ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m), "dddd", x) Then
        status = dll_stiffness_radius_si(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_STIFFNESS_RADIUS_SI = y1 Else OVS_STIFFNESS_RADIUS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_STIFFNESS_RADIUS_SI = Called("stiffness_radius", "si", "value", "", Array(thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

Public Function OVS_STIFFNESS_RADIUS_SI_WHY(ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_STIFFNESS_RADIUS_SI_WHY = Called("stiffness_radius", "si", "why", "", Array(thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

Public Function OVS_STIFFNESS_RADIUS_SI_GET(ByVal result As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_STIFFNESS_RADIUS_SI_GET = Called("stiffness_radius", "si", "get", result, Array(thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

' The radius of the circle that carries a load at its contact pressure.
' load_lbf: load of one wheel or post (lbf); more than 0 lbf, at most 2248089.431 lbf
' pressure_psi: contact pressure (psi); at least 0.14503773773 psi, at most 14503.773773 psi
' Gives radius_in (radius of the contact).
Public Function OVS_CONTACT_RADIUS_US(ByVal load_lbf As Variant, ByVal pressure_psi As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_lbf, pressure_psi), "dd", x) Then
        status = dll_contact_radius_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CONTACT_RADIUS_US = y1 Else OVS_CONTACT_RADIUS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CONTACT_RADIUS_US = Called("contact_radius", "us", "value", "", Array(load_lbf, pressure_psi))
End Function

Public Function OVS_CONTACT_RADIUS_US_WHY(ByVal load_lbf As Variant, ByVal pressure_psi As Variant) As Variant
    OVS_CONTACT_RADIUS_US_WHY = Called("contact_radius", "us", "why", "", Array(load_lbf, pressure_psi))
End Function

Public Function OVS_CONTACT_RADIUS_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal pressure_psi As Variant) As Variant
    OVS_CONTACT_RADIUS_US_GET = Called("contact_radius", "us", "get", result, Array(load_lbf, pressure_psi))
End Function

' The radius of the circle that carries a load at its contact pressure.
' load_kn: load of one wheel or post (kN); more than 0 kN, at most 10000 kN
' pressure_kpa: contact pressure (kPa); at least 1 kPa, at most 100000 kPa
' Gives radius_mm (radius of the contact).
Public Function OVS_CONTACT_RADIUS_SI(ByVal load_kn As Variant, ByVal pressure_kpa As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_kn, pressure_kpa), "dd", x) Then
        status = dll_contact_radius_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CONTACT_RADIUS_SI = y1 Else OVS_CONTACT_RADIUS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CONTACT_RADIUS_SI = Called("contact_radius", "si", "value", "", Array(load_kn, pressure_kpa))
End Function

Public Function OVS_CONTACT_RADIUS_SI_WHY(ByVal load_kn As Variant, ByVal pressure_kpa As Variant) As Variant
    OVS_CONTACT_RADIUS_SI_WHY = Called("contact_radius", "si", "why", "", Array(load_kn, pressure_kpa))
End Function

Public Function OVS_CONTACT_RADIUS_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal pressure_kpa As Variant) As Variant
    OVS_CONTACT_RADIUS_SI_GET = Called("contact_radius", "si", "get", result, Array(load_kn, pressure_kpa))
End Function

' The radius of the one circle that stands for dual tyres.
' load_lbf: load of one of the two tyres (lbf); more than 0 lbf, at most 2248089.431 lbf
' pressure_psi: contact pressure (psi); at least 0.14503773773 psi, at most 14503.773773 psi
' spacing_in: middle to middle of the two tyres (in); at least 1.96850393701 in, at most 78.7401574803 in
' Gives radius_in (radius of the circle).
Public Function OVS_CONTACT_RADIUS_DUAL_US(ByVal load_lbf As Variant, ByVal pressure_psi As Variant, ByVal spacing_in As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_lbf, pressure_psi, spacing_in), "ddd", x) Then
        status = dll_contact_radius_dual_us(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_CONTACT_RADIUS_DUAL_US = y1 Else OVS_CONTACT_RADIUS_DUAL_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CONTACT_RADIUS_DUAL_US = Called("contact_radius_dual", "us", "value", "", Array(load_lbf, pressure_psi, spacing_in))
End Function

Public Function OVS_CONTACT_RADIUS_DUAL_US_WHY(ByVal load_lbf As Variant, ByVal pressure_psi As Variant, ByVal spacing_in As Variant) As Variant
    OVS_CONTACT_RADIUS_DUAL_US_WHY = Called("contact_radius_dual", "us", "why", "", Array(load_lbf, pressure_psi, spacing_in))
End Function

Public Function OVS_CONTACT_RADIUS_DUAL_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal pressure_psi As Variant, ByVal spacing_in As Variant) As Variant
    OVS_CONTACT_RADIUS_DUAL_US_GET = Called("contact_radius_dual", "us", "get", result, Array(load_lbf, pressure_psi, spacing_in))
End Function

' The radius of the one circle that stands for dual tyres.
' load_kn: load of one of the two tyres (kN); more than 0 kN, at most 10000 kN
' pressure_kpa: contact pressure (kPa); at least 1 kPa, at most 100000 kPa
' spacing_mm: middle to middle of the two tyres (mm); at least 50 mm, at most 2000 mm
' Gives radius_mm (radius of the circle).
Public Function OVS_CONTACT_RADIUS_DUAL_SI(ByVal load_kn As Variant, ByVal pressure_kpa As Variant, ByVal spacing_mm As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_kn, pressure_kpa, spacing_mm), "ddd", x) Then
        status = dll_contact_radius_dual_si(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_CONTACT_RADIUS_DUAL_SI = y1 Else OVS_CONTACT_RADIUS_DUAL_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CONTACT_RADIUS_DUAL_SI = Called("contact_radius_dual", "si", "value", "", Array(load_kn, pressure_kpa, spacing_mm))
End Function

Public Function OVS_CONTACT_RADIUS_DUAL_SI_WHY(ByVal load_kn As Variant, ByVal pressure_kpa As Variant, ByVal spacing_mm As Variant) As Variant
    OVS_CONTACT_RADIUS_DUAL_SI_WHY = Called("contact_radius_dual", "si", "why", "", Array(load_kn, pressure_kpa, spacing_mm))
End Function

Public Function OVS_CONTACT_RADIUS_DUAL_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal pressure_kpa As Variant, ByVal spacing_mm As Variant) As Variant
    OVS_CONTACT_RADIUS_DUAL_SI_GET = Called("contact_radius_dual", "si", "get", result, Array(load_kn, pressure_kpa, spacing_mm))
End Function

' Westergaard's equivalent radius, which mends the stress right under a small contact.
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' Gives equivalent_in (equivalent radius).
Public Function OVS_EQUIVALENT_RADIUS_US(ByVal radius_in As Variant, ByVal thickness_in As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(radius_in, thickness_in), "dd", x) Then
        status = dll_equivalent_radius_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_EQUIVALENT_RADIUS_US = y1 Else OVS_EQUIVALENT_RADIUS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_EQUIVALENT_RADIUS_US = Called("equivalent_radius", "us", "value", "", Array(radius_in, thickness_in))
End Function

Public Function OVS_EQUIVALENT_RADIUS_US_WHY(ByVal radius_in As Variant, ByVal thickness_in As Variant) As Variant
    OVS_EQUIVALENT_RADIUS_US_WHY = Called("equivalent_radius", "us", "why", "", Array(radius_in, thickness_in))
End Function

Public Function OVS_EQUIVALENT_RADIUS_US_GET(ByVal result As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant) As Variant
    OVS_EQUIVALENT_RADIUS_US_GET = Called("equivalent_radius", "us", "get", result, Array(radius_in, thickness_in))
End Function

' Westergaard's equivalent radius, which mends the stress right under a small contact.
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' Gives equivalent_mm (equivalent radius).
Public Function OVS_EQUIVALENT_RADIUS_SI(ByVal radius_mm As Variant, ByVal thickness_mm As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(radius_mm, thickness_mm), "dd", x) Then
        status = dll_equivalent_radius_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_EQUIVALENT_RADIUS_SI = y1 Else OVS_EQUIVALENT_RADIUS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_EQUIVALENT_RADIUS_SI = Called("equivalent_radius", "si", "value", "", Array(radius_mm, thickness_mm))
End Function

Public Function OVS_EQUIVALENT_RADIUS_SI_WHY(ByVal radius_mm As Variant, ByVal thickness_mm As Variant) As Variant
    OVS_EQUIVALENT_RADIUS_SI_WHY = Called("equivalent_radius", "si", "why", "", Array(radius_mm, thickness_mm))
End Function

Public Function OVS_EQUIVALENT_RADIUS_SI_GET(ByVal result As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant) As Variant
    OVS_EQUIVALENT_RADIUS_SI_GET = Called("equivalent_radius", "si", "get", result, Array(radius_mm, thickness_mm))
End Function

' Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
' load_lbf: load of one wheel or post (lbf); more than 0 lbf, at most 2248089.431 lbf
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' Gives stress_psi (greatest tensile stress), deflection_in (settlement under the load), stiffness_in (radius of relative stiffness).
Public Function OVS_INTERIOR_LOAD_US(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    Dim x(0 To 5) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci), "dddddd", x) Then
        status = dll_interior_load_us(x(0), x(1), x(2), x(3), x(4), x(5), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_INTERIOR_LOAD_US = SideBySide(Array(y1, y2, y3)) Else OVS_INTERIOR_LOAD_US = ErrorFor(status)
        Exit Function
    End If
    OVS_INTERIOR_LOAD_US = Called("interior_load", "us", "value", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

Public Function OVS_INTERIOR_LOAD_US_WHY(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_INTERIOR_LOAD_US_WHY = Called("interior_load", "us", "why", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

Public Function OVS_INTERIOR_LOAD_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_INTERIOR_LOAD_US_GET = Called("interior_load", "us", "get", result, Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci))
End Function

' Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
' load_kn: load of one wheel or post (kN); more than 0 kN, at most 10000 kN
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' Gives stress_mpa (greatest tensile stress), deflection_mm (settlement under the load), stiffness_mm (radius of relative stiffness).
Public Function OVS_INTERIOR_LOAD_SI(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    Dim x(0 To 5) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m), "dddddd", x) Then
        status = dll_interior_load_si(x(0), x(1), x(2), x(3), x(4), x(5), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_INTERIOR_LOAD_SI = SideBySide(Array(y1, y2, y3)) Else OVS_INTERIOR_LOAD_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_INTERIOR_LOAD_SI = Called("interior_load", "si", "value", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

Public Function OVS_INTERIOR_LOAD_SI_WHY(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_INTERIOR_LOAD_SI_WHY = Called("interior_load", "si", "why", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

Public Function OVS_INTERIOR_LOAD_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_INTERIOR_LOAD_SI_GET = Called("interior_load", "si", "get", result, Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m))
End Function

' Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a circle or a semicircle.
' load_lbf: load of one wheel or post (lbf); more than 0 lbf, at most 2248089.431 lbf
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' footprint: shape of the contact; the radius is that shape's own; circle or semicircle
' Gives stress_psi (greatest tensile stress), deflection_in (settlement under the load), stiffness_in (radius of relative stiffness).
Public Function OVS_EDGE_LOAD_US(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_US = Called("edge_load", "us", "value", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, footprint))
End Function

Public Function OVS_EDGE_LOAD_US_WHY(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_US_WHY = Called("edge_load", "us", "why", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, footprint))
End Function

Public Function OVS_EDGE_LOAD_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_US_GET = Called("edge_load", "us", "get", result, Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, footprint))
End Function

' Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a circle or a semicircle.
' load_kn: load of one wheel or post (kN); more than 0 kN, at most 10000 kN
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' footprint: shape of the contact; the radius is that shape's own; circle or semicircle
' Gives stress_mpa (greatest tensile stress), deflection_mm (settlement under the load), stiffness_mm (radius of relative stiffness).
Public Function OVS_EDGE_LOAD_SI(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_SI = Called("edge_load", "si", "value", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, footprint))
End Function

Public Function OVS_EDGE_LOAD_SI_WHY(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_SI_WHY = Called("edge_load", "si", "why", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, footprint))
End Function

Public Function OVS_EDGE_LOAD_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal footprint As Variant) As Variant
    OVS_EDGE_LOAD_SI_GET = Called("edge_load", "si", "get", result, Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, footprint))
End Function

' Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a quarter to a half more.
' load_lbf: load of one wheel or post (lbf); more than 0 lbf, at most 2248089.431 lbf
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' Gives stress_psi (greatest tensile stress).
Public Function OVS_EDGE_LOAD_1926_US(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal subgrade_pci As Variant) As Variant
    Dim x(0 To 4) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci), "ddddd", x) Then
        status = dll_edge_load_1926_us(x(0), x(1), x(2), x(3), x(4), y1, notes, msg, 0)
        If status = 0 Then OVS_EDGE_LOAD_1926_US = y1 Else OVS_EDGE_LOAD_1926_US = ErrorFor(status)
        Exit Function
    End If
    OVS_EDGE_LOAD_1926_US = Called("edge_load_1926", "us", "value", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci))
End Function

Public Function OVS_EDGE_LOAD_1926_US_WHY(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_EDGE_LOAD_1926_US_WHY = Called("edge_load_1926", "us", "why", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci))
End Function

Public Function OVS_EDGE_LOAD_1926_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal subgrade_pci As Variant) As Variant
    OVS_EDGE_LOAD_1926_US_GET = Called("edge_load_1926", "us", "get", result, Array(load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci))
End Function

' Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a quarter to a half more.
' load_kn: load of one wheel or post (kN); more than 0 kN, at most 10000 kN
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' Gives stress_mpa (greatest tensile stress).
Public Function OVS_EDGE_LOAD_1926_SI(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    Dim x(0 To 4) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m), "ddddd", x) Then
        status = dll_edge_load_1926_si(x(0), x(1), x(2), x(3), x(4), y1, notes, msg, 0)
        If status = 0 Then OVS_EDGE_LOAD_1926_SI = y1 Else OVS_EDGE_LOAD_1926_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_EDGE_LOAD_1926_SI = Called("edge_load_1926", "si", "value", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m))
End Function

Public Function OVS_EDGE_LOAD_1926_SI_WHY(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_EDGE_LOAD_1926_SI_WHY = Called("edge_load_1926", "si", "why", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m))
End Function

Public Function OVS_EDGE_LOAD_1926_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal subgrade_mpa_per_m As Variant) As Variant
    OVS_EDGE_LOAD_1926_SI_GET = Called("edge_load_1926", "si", "get", result, Array(load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m))
End Function

' Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
' load_lbf: load of one wheel or post (lbf); more than 0 lbf, at most 2248089.431 lbf
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' formula: which formula; Westergaard 1926 or Ioannides 1985
' Gives stress_psi (greatest tensile stress), deflection_in (settlement under the load), stiffness_in (radius of relative stiffness).
Public Function OVS_CORNER_LOAD_US(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_US = Called("corner_load", "us", "value", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, formula))
End Function

Public Function OVS_CORNER_LOAD_US_WHY(ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_US_WHY = Called("corner_load", "us", "why", "", Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, formula))
End Function

Public Function OVS_CORNER_LOAD_US_GET(ByVal result As Variant, ByVal load_lbf As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_US_GET = Called("corner_load", "us", "get", result, Array(load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, formula))
End Function

' Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
' load_kn: load of one wheel or post (kN); more than 0 kN, at most 10000 kN
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' formula: which formula; Westergaard 1926 or Ioannides 1985
' Gives stress_mpa (greatest tensile stress), deflection_mm (settlement under the load), stiffness_mm (radius of relative stiffness).
Public Function OVS_CORNER_LOAD_SI(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_SI = Called("corner_load", "si", "value", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, formula))
End Function

Public Function OVS_CORNER_LOAD_SI_WHY(ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_SI_WHY = Called("corner_load", "si", "why", "", Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, formula))
End Function

Public Function OVS_CORNER_LOAD_SI_GET(ByVal result As Variant, ByVal load_kn As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_LOAD_SI_GET = Called("corner_load", "si", "get", result, Array(load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, formula))
End Function

' How far from a corner it breaks off under a load, along the bisector.
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' stiffness_in: relative stiffness, its radius (in); at least 0.393700787402 in, at most 1968.50393701 in
' formula: which formula; textbook, 2.58 or Westergaard, 2.38
' Gives distance_in (distance from the corner).
Public Function OVS_CORNER_CRACK_US(ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_US = Called("corner_crack", "us", "value", "", Array(radius_in, stiffness_in, formula))
End Function

Public Function OVS_CORNER_CRACK_US_WHY(ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_US_WHY = Called("corner_crack", "us", "why", "", Array(radius_in, stiffness_in, formula))
End Function

Public Function OVS_CORNER_CRACK_US_GET(ByVal result As Variant, ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_US_GET = Called("corner_crack", "us", "get", result, Array(radius_in, stiffness_in, formula))
End Function

' How far from a corner it breaks off under a load, along the bisector.
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' stiffness_mm: relative stiffness, its radius (mm); at least 10 mm, at most 50000 mm
' formula: which formula; textbook, 2.58 or Westergaard, 2.38
' Gives distance_mm (distance from the corner).
Public Function OVS_CORNER_CRACK_SI(ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_SI = Called("corner_crack", "si", "value", "", Array(radius_mm, stiffness_mm, formula))
End Function

Public Function OVS_CORNER_CRACK_SI_WHY(ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_SI_WHY = Called("corner_crack", "si", "why", "", Array(radius_mm, stiffness_mm, formula))
End Function

Public Function OVS_CORNER_CRACK_SI_GET(ByVal result As Variant, ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal formula As Variant) As Variant
    OVS_CORNER_CRACK_SI_GET = Called("corner_crack", "si", "get", result, Array(radius_mm, stiffness_mm, formula))
End Function

' What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
' distance_in: from the middle of the load (in); at least 0 in, at most 39370.0787402 in
' radius_in: radius of the contact, at most 2 radii of relative stiffness (in); at least 0.0393700787402 in, at most 196.850393701 in
' stiffness_in: relative stiffness, its radius (in); at least 0.393700787402 in, at most 1968.50393701 in
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' Gives deflection_ratio (deflection over load / (subgrade stiffness^2)), radial_ratio (moment towards the load, for each unit of width and load), tangential_ratio (across that direction, for each unit of width and load).
Public Function OVS_LOAD_INFLUENCE_US(ByVal distance_in As Variant, ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal poisson_ratio As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(distance_in, radius_in, stiffness_in, poisson_ratio), "dddd", x) Then
        status = dll_load_influence_us(x(0), x(1), x(2), x(3), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_LOAD_INFLUENCE_US = SideBySide(Array(y1, y2, y3)) Else OVS_LOAD_INFLUENCE_US = ErrorFor(status)
        Exit Function
    End If
    OVS_LOAD_INFLUENCE_US = Called("load_influence", "us", "value", "", Array(distance_in, radius_in, stiffness_in, poisson_ratio))
End Function

Public Function OVS_LOAD_INFLUENCE_US_WHY(ByVal distance_in As Variant, ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal poisson_ratio As Variant) As Variant
    OVS_LOAD_INFLUENCE_US_WHY = Called("load_influence", "us", "why", "", Array(distance_in, radius_in, stiffness_in, poisson_ratio))
End Function

Public Function OVS_LOAD_INFLUENCE_US_GET(ByVal result As Variant, ByVal distance_in As Variant, ByVal radius_in As Variant, ByVal stiffness_in As Variant, ByVal poisson_ratio As Variant) As Variant
    OVS_LOAD_INFLUENCE_US_GET = Called("load_influence", "us", "get", result, Array(distance_in, radius_in, stiffness_in, poisson_ratio))
End Function

' What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
' distance_mm: from the middle of the load (mm); at least 0 mm, at most 1000000 mm
' radius_mm: radius of the contact, at most 2 radii of relative stiffness (mm); at least 1 mm, at most 5000 mm
' stiffness_mm: relative stiffness, its radius (mm); at least 10 mm, at most 50000 mm
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' Gives deflection_ratio (deflection over load / (subgrade stiffness^2)), radial_ratio (moment towards the load, for each unit of width and load), tangential_ratio (across that direction, for each unit of width and load).
Public Function OVS_LOAD_INFLUENCE_SI(ByVal distance_mm As Variant, ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal poisson_ratio As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, y2 As Double, y3 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(distance_mm, radius_mm, stiffness_mm, poisson_ratio), "dddd", x) Then
        status = dll_load_influence_si(x(0), x(1), x(2), x(3), y1, y2, y3, notes, msg, 0)
        If status = 0 Then OVS_LOAD_INFLUENCE_SI = SideBySide(Array(y1, y2, y3)) Else OVS_LOAD_INFLUENCE_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_LOAD_INFLUENCE_SI = Called("load_influence", "si", "value", "", Array(distance_mm, radius_mm, stiffness_mm, poisson_ratio))
End Function

Public Function OVS_LOAD_INFLUENCE_SI_WHY(ByVal distance_mm As Variant, ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal poisson_ratio As Variant) As Variant
    OVS_LOAD_INFLUENCE_SI_WHY = Called("load_influence", "si", "why", "", Array(distance_mm, radius_mm, stiffness_mm, poisson_ratio))
End Function

Public Function OVS_LOAD_INFLUENCE_SI_GET(ByVal result As Variant, ByVal distance_mm As Variant, ByVal radius_mm As Variant, ByVal stiffness_mm As Variant, ByVal poisson_ratio As Variant) As Variant
    OVS_LOAD_INFLUENCE_SI_GET = Called("load_influence", "si", "get", result, Array(distance_mm, radius_mm, stiffness_mm, poisson_ratio))
End Function

' What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no numbers here, but what to ask.
' thing: what stands or rolls there; car, pickup, loaded one-ton, farm tractor, skid machine, bench, kiln, two jacks or anchored lift
' Gives load_lbf (each load; none where only the maker can say), margin_ratio (what the load is multiplied by), design_load_lbf (the load with its margin; none without a load), pressure_psi (contact pressure; none without a load), radius_in (contact radius under the load with its margin; none without a load), count (how many stand near one another), spacing_in (middle to middle), said (what was taken, or what to ask), rests_on (its basis, by name).
Public Function OVS_USUAL_LOAD_US(ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_US = Called("usual_load", "us", "value", "", Array(thing))
End Function

Public Function OVS_USUAL_LOAD_US_WHY(ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_US_WHY = Called("usual_load", "us", "why", "", Array(thing))
End Function

Public Function OVS_USUAL_LOAD_US_GET(ByVal result As Variant, ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_US_GET = Called("usual_load", "us", "get", result, Array(thing))
End Function

' What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no numbers here, but what to ask.
' thing: what stands or rolls there; car, pickup, loaded one-ton, farm tractor, skid machine, bench, kiln, two jacks or anchored lift
' Gives load_kn (each load; none where only the maker can say), margin_ratio (what the load is multiplied by), design_load_kn (the load with its margin; none without a load), pressure_kpa (contact pressure; none without a load), radius_mm (contact radius under the load with its margin; none without a load), count (how many stand near one another), spacing_mm (middle to middle), said (what was taken, or what to ask), rests_on (its basis, by name).
Public Function OVS_USUAL_LOAD_SI(ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_SI = Called("usual_load", "si", "value", "", Array(thing))
End Function

Public Function OVS_USUAL_LOAD_SI_WHY(ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_SI_WHY = Called("usual_load", "si", "why", "", Array(thing))
End Function

Public Function OVS_USUAL_LOAD_SI_GET(ByVal result As Variant, ByVal thing As Variant) As Variant
    OVS_USUAL_LOAD_SI_GET = Called("usual_load", "si", "get", result, Array(thing))
End Function

' Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an old slab what each layer feels.
' loads: the loads; a range with the columns [name], load_lbf, [radius_in], [pressure_psi], x_ft, y_ft, position
' thickness_in: thickness of the slab, or of the overlay where an old slab is given (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi; left out: 3,600,000 psi, because normal-weight concrete of 4,000 psi
' poisson_ratio: Poisson's ratio of the concrete (1); at least 0 1, at most 0.5 1; left out: 0.15 ratio, because usual for concrete
' subgrade_pci: subgrade reaction k under all concrete (pci); at least 5 pci, at most 2000 pci; left out: 100 pci, because medium by heel and bar
' edge_form: contact at an edge; circle or semicircle; left out: circle, because a wheel that touches the edge from inside
' corner_form: formula in a corner; Westergaard 1926 or Ioannides 1985; left out: Westergaard 1926, because its stress is the nearest to a plate by finite elements
' transfer_percent: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm) (%); at least 0 %, at most 50 %; left out: 0 %, because a free edge
' length_ft: length of the slab between joints, to see whether it is large enough (ft); at least 0.328083989501 ft, at most 656.167979003 ft; may be left out
' width_ft: its width, likewise (ft); at least 0.328083989501 ft, at most 656.167979003 ft; may be left out
' old_slab_in: old slab under the overlay, its thickness (in); more than 0 in, at most 78.7401574803 in; may be left out
' old_modulus_psi: old slab, its modulus of elasticity (psi); at least 14503.773773 psi, at most 14503773.773 psi; may be left out
' bond: how the overlay holds to it; bonded, partly bonded or unbonded; may be left out
' Gives stiffness_in (radius of relative stiffness), equivalent_in (thickness of the plate that was figured), greatest_psi (greatest governing stress of that plate), governs (under which load, the first being 1), felt (what each load feels).
Public Function OVS_SLAB_STRESS_US(ByVal loads As Variant, ByVal thickness_in As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_ft As Variant, Optional ByVal width_ft As Variant, Optional ByVal old_slab_in As Variant, Optional ByVal old_modulus_psi As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_US = Called("slab_stress", "us", "value", "", Array(loads, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, length_ft, width_ft, old_slab_in, old_modulus_psi, bond))
End Function

Public Function OVS_SLAB_STRESS_US_WHY(ByVal loads As Variant, ByVal thickness_in As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_ft As Variant, Optional ByVal width_ft As Variant, Optional ByVal old_slab_in As Variant, Optional ByVal old_modulus_psi As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_US_WHY = Called("slab_stress", "us", "why", "", Array(loads, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, length_ft, width_ft, old_slab_in, old_modulus_psi, bond))
End Function

Public Function OVS_SLAB_STRESS_US_GET(ByVal result As Variant, ByVal loads As Variant, ByVal thickness_in As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_ft As Variant, Optional ByVal width_ft As Variant, Optional ByVal old_slab_in As Variant, Optional ByVal old_modulus_psi As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_US_GET = Called("slab_stress", "us", "get", result, Array(loads, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, length_ft, width_ft, old_slab_in, old_modulus_psi, bond))
End Function

' Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an old slab what each layer feels.
' loads: the loads; a range with the columns [name], load_kn, [radius_mm], [pressure_kpa], x_m, y_m, position
' thickness_mm: thickness of the slab, or of the overlay where an old slab is given (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa; left out: 3,600,000 psi, because normal-weight concrete of 4,000 psi
' poisson_ratio: Poisson's ratio of the concrete (1); at least 0 1, at most 0.5 1; left out: 0.15 ratio, because usual for concrete
' subgrade_mpa_per_m: subgrade reaction k under all concrete (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m; left out: 100 pci, because medium by heel and bar
' edge_form: contact at an edge; circle or semicircle; left out: circle, because a wheel that touches the edge from inside
' corner_form: formula in a corner; Westergaard 1926 or Ioannides 1985; left out: Westergaard 1926, because its stress is the nearest to a plate by finite elements
' transfer_percent: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm) (%); at least 0 %, at most 50 %; left out: 0 %, because a free edge
' length_m: length of the slab between joints, to see whether it is large enough (m); at least 0.1 m, at most 200 m; may be left out
' width_m: its width, likewise (m); at least 0.1 m, at most 200 m; may be left out
' old_slab_mm: old slab under the overlay, its thickness (mm); more than 0 mm, at most 2000 mm; may be left out
' old_modulus_mpa: old slab, its modulus of elasticity (MPa); at least 100 MPa, at most 100000 MPa; may be left out
' bond: how the overlay holds to it; bonded, partly bonded or unbonded; may be left out
' Gives stiffness_mm (radius of relative stiffness), equivalent_mm (thickness of the plate that was figured), greatest_mpa (greatest governing stress of that plate), governs (under which load, the first being 1), felt (what each load feels).
Public Function OVS_SLAB_STRESS_SI(ByVal loads As Variant, ByVal thickness_mm As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_m As Variant, Optional ByVal width_m As Variant, Optional ByVal old_slab_mm As Variant, Optional ByVal old_modulus_mpa As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_SI = Called("slab_stress", "si", "value", "", Array(loads, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, length_m, width_m, old_slab_mm, old_modulus_mpa, bond))
End Function

Public Function OVS_SLAB_STRESS_SI_WHY(ByVal loads As Variant, ByVal thickness_mm As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_m As Variant, Optional ByVal width_m As Variant, Optional ByVal old_slab_mm As Variant, Optional ByVal old_modulus_mpa As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_SI_WHY = Called("slab_stress", "si", "why", "", Array(loads, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, length_m, width_m, old_slab_mm, old_modulus_mpa, bond))
End Function

Public Function OVS_SLAB_STRESS_SI_GET(ByVal result As Variant, ByVal loads As Variant, ByVal thickness_mm As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal length_m As Variant, Optional ByVal width_m As Variant, Optional ByVal old_slab_mm As Variant, Optional ByVal old_modulus_mpa As Variant, Optional ByVal bond As Variant) As Variant
    OVS_SLAB_STRESS_SI_GET = Called("slab_stress", "si", "get", result, Array(loads, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, length_m, width_m, old_slab_mm, old_modulus_mpa, bond))
End Function

' The safety factors in use for a kind of load, from memory: confirm.
' kind: kind of load; moving wheel, wheel, unlimited passes, post or jack, uniform or wall
' Gives least_ratio (least in use), usual_ratio (taken where nobody says).
Public Function OVS_SAFETY_FACTORS_US(ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_US = Called("safety_factors", "us", "value", "", Array(kind))
End Function

Public Function OVS_SAFETY_FACTORS_US_WHY(ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_US_WHY = Called("safety_factors", "us", "why", "", Array(kind))
End Function

Public Function OVS_SAFETY_FACTORS_US_GET(ByVal result As Variant, ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_US_GET = Called("safety_factors", "us", "get", result, Array(kind))
End Function

' The safety factors in use for a kind of load, from memory: confirm.
' kind: kind of load; moving wheel, wheel, unlimited passes, post or jack, uniform or wall
' Gives least_ratio (least in use), usual_ratio (taken where nobody says).
Public Function OVS_SAFETY_FACTORS_SI(ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_SI = Called("safety_factors", "si", "value", "", Array(kind))
End Function

Public Function OVS_SAFETY_FACTORS_SI_WHY(ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_SI_WHY = Called("safety_factors", "si", "why", "", Array(kind))
End Function

Public Function OVS_SAFETY_FACTORS_SI_GET(ByVal result As Variant, ByVal kind As Variant) As Variant
    OVS_SAFETY_FACTORS_SI_GET = Called("safety_factors", "si", "get", result, Array(kind))
End Function

' The stress that a safety factor allows.
' rupture_psi: modulus of rupture (psi); at least 50 psi, at most 2000 psi
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives allowable_psi (stress allowed).
Public Function OVS_ALLOWABLE_STRESS_US(ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(rupture_psi, safety_ratio), "dd", x) Then
        status = dll_allowable_stress_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_ALLOWABLE_STRESS_US = y1 Else OVS_ALLOWABLE_STRESS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_ALLOWABLE_STRESS_US = Called("allowable_stress", "us", "value", "", Array(rupture_psi, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_STRESS_US_WHY(ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_STRESS_US_WHY = Called("allowable_stress", "us", "why", "", Array(rupture_psi, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_STRESS_US_GET(ByVal result As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_STRESS_US_GET = Called("allowable_stress", "us", "get", result, Array(rupture_psi, safety_ratio))
End Function

' The stress that a safety factor allows.
' rupture_mpa: modulus of rupture (MPa); at least 0.344737864658 MPa, at most 13.7895145863 MPa
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives allowable_mpa (stress allowed).
Public Function OVS_ALLOWABLE_STRESS_SI(ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(rupture_mpa, safety_ratio), "dd", x) Then
        status = dll_allowable_stress_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_ALLOWABLE_STRESS_SI = y1 Else OVS_ALLOWABLE_STRESS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_ALLOWABLE_STRESS_SI = Called("allowable_stress", "si", "value", "", Array(rupture_mpa, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_STRESS_SI_WHY(ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_STRESS_SI_WHY = Called("allowable_stress", "si", "why", "", Array(rupture_mpa, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_STRESS_SI_GET(ByVal result As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_STRESS_SI_GET = Called("allowable_stress", "si", "get", result, Array(rupture_mpa, safety_ratio))
End Function

' The one load that a slab carries at a place, on a contact of a given radius.
' position: where on the slab it stands; interior, edge or corner
' radius_in: radius of the contact (in); at least 0.0393700787402 in, at most 196.850393701 in
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' rupture_psi: its strength in bending, the modulus of rupture (psi); at least 50 psi, at most 2000 psi
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives load_lbf (load allowed).
Public Function OVS_ALLOWABLE_LOAD_US(ByVal position As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_US = Called("allowable_load", "us", "value", "", Array(position, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, rupture_psi, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_LOAD_US_WHY(ByVal position As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_US_WHY = Called("allowable_load", "us", "why", "", Array(position, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, rupture_psi, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_LOAD_US_GET(ByVal result As Variant, ByVal position As Variant, ByVal radius_in As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_US_GET = Called("allowable_load", "us", "get", result, Array(position, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, rupture_psi, safety_ratio))
End Function

' The one load that a slab carries at a place, on a contact of a given radius.
' position: where on the slab it stands; interior, edge or corner
' radius_mm: radius of the contact (mm); at least 1 mm, at most 5000 mm
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' rupture_mpa: its strength in bending, the modulus of rupture (MPa); at least 0.344737864658 MPa, at most 13.7895145863 MPa
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives load_kn (load allowed).
Public Function OVS_ALLOWABLE_LOAD_SI(ByVal position As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_SI = Called("allowable_load", "si", "value", "", Array(position, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_LOAD_SI_WHY(ByVal position As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_SI_WHY = Called("allowable_load", "si", "why", "", Array(position, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

Public Function OVS_ALLOWABLE_LOAD_SI_GET(ByVal result As Variant, ByVal position As Variant, ByVal radius_mm As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_ALLOWABLE_LOAD_SI_GET = Called("allowable_load", "si", "get", result, Array(position, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

' How often a stress may come, by its ratio to the modulus of rupture.
' stress_ratio_ratio: stress over modulus of rupture (1); more than 0 1, at most 1 1
' Gives unlimited (whether there is no limit), repetitions_ratio (how often; none where there is no limit).
Public Function OVS_REPETITIONS_ALLOWED_US(ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_US = Called("repetitions_allowed", "us", "value", "", Array(stress_ratio_ratio))
End Function

Public Function OVS_REPETITIONS_ALLOWED_US_WHY(ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_US_WHY = Called("repetitions_allowed", "us", "why", "", Array(stress_ratio_ratio))
End Function

Public Function OVS_REPETITIONS_ALLOWED_US_GET(ByVal result As Variant, ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_US_GET = Called("repetitions_allowed", "us", "get", result, Array(stress_ratio_ratio))
End Function

' How often a stress may come, by its ratio to the modulus of rupture.
' stress_ratio_ratio: stress over modulus of rupture (1); more than 0 1, at most 1 1
' Gives unlimited (whether there is no limit), repetitions_ratio (how often; none where there is no limit).
Public Function OVS_REPETITIONS_ALLOWED_SI(ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_SI = Called("repetitions_allowed", "si", "value", "", Array(stress_ratio_ratio))
End Function

Public Function OVS_REPETITIONS_ALLOWED_SI_WHY(ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_SI_WHY = Called("repetitions_allowed", "si", "why", "", Array(stress_ratio_ratio))
End Function

Public Function OVS_REPETITIONS_ALLOWED_SI_GET(ByVal result As Variant, ByVal stress_ratio_ratio As Variant) As Variant
    OVS_REPETITIONS_ALLOWED_SI_GET = Called("repetitions_allowed", "si", "get", result, Array(stress_ratio_ratio))
End Function

' The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
' loads: the loads; a range with the columns [name], load_lbf, [radius_in], [pressure_psi], x_ft, y_ft, position
' rupture_psi: modulus of rupture of the concrete (psi); at least 50 psi, at most 2000 psi
' safety_ratio: safety factor (1); at least 1 1, at most 10 1; left out: 2 ratio, because usual for wheels, posts and jacks
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi; left out: 3,600,000 psi, because normal-weight concrete of 4,000 psi
' poisson_ratio: Poisson's ratio of the concrete (1); at least 0 1, at most 0.5 1; left out: 0.15 ratio, because usual for concrete
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci; left out: 100 pci, because medium by heel and bar
' edge_form: contact at an edge; circle or semicircle; left out: circle, because a wheel that touches the edge from inside
' corner_form: formula in a corner; Westergaard 1926 or Ioannides 1985; left out: Westergaard 1926, because its stress is the nearest to a plate by finite elements
' transfer_percent: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm) (%); at least 0 %, at most 50 %; left out: 0 %, because a free edge
' least_in: the search begins here (in); at least 1 in, at most 48 in; left out: 2 in, because no slab on ground is thinner
' greatest_in: and ends here (in); more than 0 in, at most 78.7401574803 in; left out: 24 in, because thicker is no floor any more
' Gives thickness_in (smallest thickness), stress_psi (governing stress there), allowable_psi (stress allowed), governs (the load that governs, the first being 1).
Public Function OVS_THICKNESS_NEEDED_US(ByVal loads As Variant, ByVal rupture_psi As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_in As Variant, Optional ByVal greatest_in As Variant) As Variant
    OVS_THICKNESS_NEEDED_US = Called("thickness_needed", "us", "value", "", Array(loads, rupture_psi, safety_ratio, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, least_in, greatest_in))
End Function

Public Function OVS_THICKNESS_NEEDED_US_WHY(ByVal loads As Variant, ByVal rupture_psi As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_in As Variant, Optional ByVal greatest_in As Variant) As Variant
    OVS_THICKNESS_NEEDED_US_WHY = Called("thickness_needed", "us", "why", "", Array(loads, rupture_psi, safety_ratio, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, least_in, greatest_in))
End Function

Public Function OVS_THICKNESS_NEEDED_US_GET(ByVal result As Variant, ByVal loads As Variant, ByVal rupture_psi As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_psi As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_pci As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_in As Variant, Optional ByVal greatest_in As Variant) As Variant
    OVS_THICKNESS_NEEDED_US_GET = Called("thickness_needed", "us", "get", result, Array(loads, rupture_psi, safety_ratio, modulus_psi, poisson_ratio, subgrade_pci, edge_form, corner_form, transfer_percent, least_in, greatest_in))
End Function

' The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
' loads: the loads; a range with the columns [name], load_kn, [radius_mm], [pressure_kpa], x_m, y_m, position
' rupture_mpa: modulus of rupture of the concrete (MPa); at least 0.344737864658 MPa, at most 13.7895145863 MPa
' safety_ratio: safety factor (1); at least 1 1, at most 10 1; left out: 2 ratio, because usual for wheels, posts and jacks
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa; left out: 3,600,000 psi, because normal-weight concrete of 4,000 psi
' poisson_ratio: Poisson's ratio of the concrete (1); at least 0 1, at most 0.5 1; left out: 0.15 ratio, because usual for concrete
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m; left out: 100 pci, because medium by heel and bar
' edge_form: contact at an edge; circle or semicircle; left out: circle, because a wheel that touches the edge from inside
' corner_form: formula in a corner; Westergaard 1926 or Ioannides 1985; left out: Westergaard 1926, because its stress is the nearest to a plate by finite elements
' transfer_percent: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm) (%); at least 0 %, at most 50 %; left out: 0 %, because a free edge
' least_mm: the search begins here (mm); at least 25.4 mm, at most 1219.2 mm; left out: 2 in, because no slab on ground is thinner
' greatest_mm: and ends here (mm); more than 0 mm, at most 2000 mm; left out: 24 in, because thicker is no floor any more
' Gives thickness_mm (smallest thickness), stress_mpa (governing stress there), allowable_mpa (stress allowed), governs (the load that governs, the first being 1).
Public Function OVS_THICKNESS_NEEDED_SI(ByVal loads As Variant, ByVal rupture_mpa As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_mm As Variant, Optional ByVal greatest_mm As Variant) As Variant
    OVS_THICKNESS_NEEDED_SI = Called("thickness_needed", "si", "value", "", Array(loads, rupture_mpa, safety_ratio, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, least_mm, greatest_mm))
End Function

Public Function OVS_THICKNESS_NEEDED_SI_WHY(ByVal loads As Variant, ByVal rupture_mpa As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_mm As Variant, Optional ByVal greatest_mm As Variant) As Variant
    OVS_THICKNESS_NEEDED_SI_WHY = Called("thickness_needed", "si", "why", "", Array(loads, rupture_mpa, safety_ratio, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, least_mm, greatest_mm))
End Function

Public Function OVS_THICKNESS_NEEDED_SI_GET(ByVal result As Variant, ByVal loads As Variant, ByVal rupture_mpa As Variant, Optional ByVal safety_ratio As Variant, Optional ByVal modulus_mpa As Variant, Optional ByVal poisson_ratio As Variant, Optional ByVal subgrade_mpa_per_m As Variant, Optional ByVal edge_form As Variant, Optional ByVal corner_form As Variant, Optional ByVal transfer_percent As Variant, Optional ByVal least_mm As Variant, Optional ByVal greatest_mm As Variant) As Variant
    OVS_THICKNESS_NEEDED_SI_GET = Called("thickness_needed", "si", "get", result, Array(loads, rupture_mpa, safety_ratio, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, edge_form, corner_form, transfer_percent, least_mm, greatest_mm))
End Function

' The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' rupture_psi: modulus of rupture (psi); at least 50 psi, at most 2000 psi
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives load_psf (load allowed on each unit of area).
Public Function OVS_UNIFORM_LOAD_US(ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_in, subgrade_pci, rupture_psi, safety_ratio), "dddd", x) Then
        status = dll_uniform_load_us(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_UNIFORM_LOAD_US = y1 Else OVS_UNIFORM_LOAD_US = ErrorFor(status)
        Exit Function
    End If
    OVS_UNIFORM_LOAD_US = Called("uniform_load", "us", "value", "", Array(thickness_in, subgrade_pci, rupture_psi, safety_ratio))
End Function

Public Function OVS_UNIFORM_LOAD_US_WHY(ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_UNIFORM_LOAD_US_WHY = Called("uniform_load", "us", "why", "", Array(thickness_in, subgrade_pci, rupture_psi, safety_ratio))
End Function

Public Function OVS_UNIFORM_LOAD_US_GET(ByVal result As Variant, ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal rupture_psi As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_UNIFORM_LOAD_US_GET = Called("uniform_load", "us", "get", result, Array(thickness_in, subgrade_pci, rupture_psi, safety_ratio))
End Function

' The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' rupture_mpa: modulus of rupture (MPa); at least 0.344737864658 MPa, at most 13.7895145863 MPa
' safety_ratio: safety factor (1); at least 1 1, at most 10 1
' Gives load_kpa (load allowed on each unit of area).
Public Function OVS_UNIFORM_LOAD_SI(ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio), "dddd", x) Then
        status = dll_uniform_load_si(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_UNIFORM_LOAD_SI = y1 Else OVS_UNIFORM_LOAD_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_UNIFORM_LOAD_SI = Called("uniform_load", "si", "value", "", Array(thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

Public Function OVS_UNIFORM_LOAD_SI_WHY(ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_UNIFORM_LOAD_SI_WHY = Called("uniform_load", "si", "why", "", Array(thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

Public Function OVS_UNIFORM_LOAD_SI_GET(ByVal result As Variant, ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal rupture_mpa As Variant, ByVal safety_ratio As Variant) As Variant
    OVS_UNIFORM_LOAD_SI_GET = Called("uniform_load", "si", "get", result, Array(thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio))
End Function

' The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free edge.
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' strength_psi: compressive strength f'c (psi); at least 1000 psi, at most 15000 psi
' place: where the wall stands; middle or doweled joint or free edge
' Gives load_lbf_per_ft (load allowed on each unit of length).
Public Function OVS_WALL_LOAD_US(ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal strength_psi As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_US = Called("wall_load", "us", "value", "", Array(thickness_in, subgrade_pci, strength_psi, place))
End Function

Public Function OVS_WALL_LOAD_US_WHY(ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal strength_psi As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_US_WHY = Called("wall_load", "us", "why", "", Array(thickness_in, subgrade_pci, strength_psi, place))
End Function

Public Function OVS_WALL_LOAD_US_GET(ByVal result As Variant, ByVal thickness_in As Variant, ByVal subgrade_pci As Variant, ByVal strength_psi As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_US_GET = Called("wall_load", "us", "get", result, Array(thickness_in, subgrade_pci, strength_psi, place))
End Function

' The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free edge.
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' strength_mpa: compressive strength f'c (MPa); at least 6.89475729317 MPa, at most 103.421359398 MPa
' place: where the wall stands; middle or doweled joint or free edge
' Gives load_kn_per_m (load allowed on each unit of length).
Public Function OVS_WALL_LOAD_SI(ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal strength_mpa As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_SI = Called("wall_load", "si", "value", "", Array(thickness_mm, subgrade_mpa_per_m, strength_mpa, place))
End Function

Public Function OVS_WALL_LOAD_SI_WHY(ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal strength_mpa As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_SI_WHY = Called("wall_load", "si", "why", "", Array(thickness_mm, subgrade_mpa_per_m, strength_mpa, place))
End Function

Public Function OVS_WALL_LOAD_SI_GET(ByVal result As Variant, ByVal thickness_mm As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal strength_mpa As Variant, ByVal place As Variant) As Variant
    OVS_WALL_LOAD_SI_GET = Called("wall_load", "si", "get", result, Array(thickness_mm, subgrade_mpa_per_m, strength_mpa, place))
End Function

' Bradbury's coefficient of curling for a side of a slab.
' side_ft: side of the slab between joints (ft); at least 0.328083989501 ft, at most 656.167979003 ft
' stiffness_in: radius of relative stiffness (in); at least 0.393700787402 in, at most 1968.50393701 in
' Gives coefficient_ratio (Bradbury's coefficient).
Public Function OVS_CURLING_COEFFICIENT_US(ByVal side_ft As Variant, ByVal stiffness_in As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(side_ft, stiffness_in), "dd", x) Then
        status = dll_curling_coefficient_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CURLING_COEFFICIENT_US = y1 Else OVS_CURLING_COEFFICIENT_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CURLING_COEFFICIENT_US = Called("curling_coefficient", "us", "value", "", Array(side_ft, stiffness_in))
End Function

Public Function OVS_CURLING_COEFFICIENT_US_WHY(ByVal side_ft As Variant, ByVal stiffness_in As Variant) As Variant
    OVS_CURLING_COEFFICIENT_US_WHY = Called("curling_coefficient", "us", "why", "", Array(side_ft, stiffness_in))
End Function

Public Function OVS_CURLING_COEFFICIENT_US_GET(ByVal result As Variant, ByVal side_ft As Variant, ByVal stiffness_in As Variant) As Variant
    OVS_CURLING_COEFFICIENT_US_GET = Called("curling_coefficient", "us", "get", result, Array(side_ft, stiffness_in))
End Function

' Bradbury's coefficient of curling for a side of a slab.
' side_m: side of the slab between joints (m); at least 0.1 m, at most 200 m
' stiffness_mm: radius of relative stiffness (mm); at least 10 mm, at most 50000 mm
' Gives coefficient_ratio (Bradbury's coefficient).
Public Function OVS_CURLING_COEFFICIENT_SI(ByVal side_m As Variant, ByVal stiffness_mm As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(side_m, stiffness_mm), "dd", x) Then
        status = dll_curling_coefficient_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_CURLING_COEFFICIENT_SI = y1 Else OVS_CURLING_COEFFICIENT_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CURLING_COEFFICIENT_SI = Called("curling_coefficient", "si", "value", "", Array(side_m, stiffness_mm))
End Function

Public Function OVS_CURLING_COEFFICIENT_SI_WHY(ByVal side_m As Variant, ByVal stiffness_mm As Variant) As Variant
    OVS_CURLING_COEFFICIENT_SI_WHY = Called("curling_coefficient", "si", "why", "", Array(side_m, stiffness_mm))
End Function

Public Function OVS_CURLING_COEFFICIENT_SI_GET(ByVal result As Variant, ByVal side_m As Variant, ByVal stiffness_mm As Variant) As Variant
    OVS_CURLING_COEFFICIENT_SI_GET = Called("curling_coefficient", "si", "get", result, Array(side_m, stiffness_mm))
End Function

' Stress from a difference of temperature between top and bottom of a slab.
' length_ft: length of the slab between joints (ft); at least 0.328083989501 ft, at most 656.167979003 ft
' width_ft: width of the slab between joints (ft); at least 0.328083989501 ft, at most 656.167979003 ft
' thickness_in: thickness of the slab (in); more than 0 in, at most 78.7401574803 in
' modulus_psi: modulus of elasticity of the concrete (psi); at least 14503.773773 psi, at most 14503773.773 psi
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_pci: subgrade reaction k (pci); at least 5 pci, at most 2000 pci
' expansion_per_degf: coefficient of thermal expansion (/degF); at least 0.000000555555555556 /degF, at most 0.0000166666666667 /degF
' difference_degf: between top and bottom, whichever is warmer (degF); at least 0 degF, at most 108 degF
' Gives interior_length_psi (stress in the middle, along the length), interior_width_psi (stress in the middle, along the width), edge_length_psi (stress half way of an edge that runs along the length), edge_width_psi (stress half way of an edge that runs along the width), of_length_ratio (coefficient C of the length), of_width_ratio (coefficient C of the width).
Public Function OVS_CURLING_STRESS_US(ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal expansion_per_degf As Variant, ByVal difference_degf As Variant) As Variant
    Dim x(0 To 7) As Double, y1 As Double, y2 As Double, y3 As Double, y4 As Double, y5 As Double, y6 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf), "dddddddd", x) Then
        status = dll_curling_stress_us(x(0), x(1), x(2), x(3), x(4), x(5), x(6), x(7), y1, y2, y3, y4, y5, y6, notes, msg, 0)
        If status = 0 Then OVS_CURLING_STRESS_US = SideBySide(Array(y1, y2, y3, y4, y5, y6)) Else OVS_CURLING_STRESS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CURLING_STRESS_US = Called("curling_stress", "us", "value", "", Array(length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf))
End Function

Public Function OVS_CURLING_STRESS_US_WHY(ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal expansion_per_degf As Variant, ByVal difference_degf As Variant) As Variant
    OVS_CURLING_STRESS_US_WHY = Called("curling_stress", "us", "why", "", Array(length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf))
End Function

Public Function OVS_CURLING_STRESS_US_GET(ByVal result As Variant, ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal thickness_in As Variant, ByVal modulus_psi As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_pci As Variant, ByVal expansion_per_degf As Variant, ByVal difference_degf As Variant) As Variant
    OVS_CURLING_STRESS_US_GET = Called("curling_stress", "us", "get", result, Array(length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf))
End Function

' Stress from a difference of temperature between top and bottom of a slab.
' length_m: length of the slab between joints (m); at least 0.1 m, at most 200 m
' width_m: width of the slab between joints (m); at least 0.1 m, at most 200 m
' thickness_mm: thickness of the slab (mm); more than 0 mm, at most 2000 mm
' modulus_mpa: modulus of elasticity of the concrete (MPa); at least 100 MPa, at most 100000 MPa
' poisson_ratio: Poisson's ratio of the concrete, often 0.15 (1); at least 0 1, at most 0.5 1
' subgrade_mpa_per_m: subgrade reaction k (MPa/m); at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m
' expansion_per_degc: coefficient of thermal expansion (/degC); at least 0.000001 /degC, at most 0.00003 /degC
' difference_k: between top and bottom, whichever is warmer (K); at least 0 K, at most 60 K
' Gives interior_length_mpa (stress in the middle, along the length), interior_width_mpa (stress in the middle, along the width), edge_length_mpa (stress half way of an edge that runs along the length), edge_width_mpa (stress half way of an edge that runs along the width), of_length_ratio (coefficient C of the length), of_width_ratio (coefficient C of the width).
Public Function OVS_CURLING_STRESS_SI(ByVal length_m As Variant, ByVal width_m As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal expansion_per_degc As Variant, ByVal difference_k As Variant) As Variant
    Dim x(0 To 7) As Double, y1 As Double, y2 As Double, y3 As Double, y4 As Double, y5 As Double, y6 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k), "dddddddd", x) Then
        status = dll_curling_stress_si(x(0), x(1), x(2), x(3), x(4), x(5), x(6), x(7), y1, y2, y3, y4, y5, y6, notes, msg, 0)
        If status = 0 Then OVS_CURLING_STRESS_SI = SideBySide(Array(y1, y2, y3, y4, y5, y6)) Else OVS_CURLING_STRESS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CURLING_STRESS_SI = Called("curling_stress", "si", "value", "", Array(length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k))
End Function

Public Function OVS_CURLING_STRESS_SI_WHY(ByVal length_m As Variant, ByVal width_m As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal expansion_per_degc As Variant, ByVal difference_k As Variant) As Variant
    OVS_CURLING_STRESS_SI_WHY = Called("curling_stress", "si", "why", "", Array(length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k))
End Function

Public Function OVS_CURLING_STRESS_SI_GET(ByVal result As Variant, ByVal length_m As Variant, ByVal width_m As Variant, ByVal thickness_mm As Variant, ByVal modulus_mpa As Variant, ByVal poisson_ratio As Variant, ByVal subgrade_mpa_per_m As Variant, ByVal expansion_per_degc As Variant, ByVal difference_k As Variant) As Variant
    OVS_CURLING_STRESS_SI_GET = Called("curling_stress", "si", "get", result, Array(length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k))
End Function

' Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' overlay_in: thickness of the overlay (in); more than 0 in, at most 78.7401574803 in
' overlay_modulus_psi: modulus of elasticity of the overlay (psi); at least 14503.773773 psi, at most 14503773.773 psi
' old_slab_in: the old slab's thickness (in); more than 0 in, at most 78.7401574803 in
' old_modulus_psi: the old slab's modulus of elasticity (psi); at least 14503.773773 psi, at most 14503773.773 psi
' Gives equivalent_in (thickness of the plate of the overlay's concrete that is as stiff as both), overlay_share_ratio (share of the rigidity that the overlay brings), overlay_top_ratio (stress at the top of the overlay, over the plate's bending stress; tension positive), overlay_bottom_ratio (at the bottom of the overlay), old_top_ratio (old slab, at its top), old_bottom_ratio (old slab, at its bottom).
Public Function OVS_TWO_LAYERS_US(ByVal bond As Variant, ByVal overlay_in As Variant, ByVal overlay_modulus_psi As Variant, ByVal old_slab_in As Variant, ByVal old_modulus_psi As Variant) As Variant
    OVS_TWO_LAYERS_US = Called("two_layers", "us", "value", "", Array(bond, overlay_in, overlay_modulus_psi, old_slab_in, old_modulus_psi))
End Function

Public Function OVS_TWO_LAYERS_US_WHY(ByVal bond As Variant, ByVal overlay_in As Variant, ByVal overlay_modulus_psi As Variant, ByVal old_slab_in As Variant, ByVal old_modulus_psi As Variant) As Variant
    OVS_TWO_LAYERS_US_WHY = Called("two_layers", "us", "why", "", Array(bond, overlay_in, overlay_modulus_psi, old_slab_in, old_modulus_psi))
End Function

Public Function OVS_TWO_LAYERS_US_GET(ByVal result As Variant, ByVal bond As Variant, ByVal overlay_in As Variant, ByVal overlay_modulus_psi As Variant, ByVal old_slab_in As Variant, ByVal old_modulus_psi As Variant) As Variant
    OVS_TWO_LAYERS_US_GET = Called("two_layers", "us", "get", result, Array(bond, overlay_in, overlay_modulus_psi, old_slab_in, old_modulus_psi))
End Function

' Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
' bond: how the overlay holds to the old slab; bonded, partly bonded or unbonded
' overlay_mm: thickness of the overlay (mm); more than 0 mm, at most 2000 mm
' overlay_modulus_mpa: modulus of elasticity of the overlay (MPa); at least 100 MPa, at most 100000 MPa
' old_slab_mm: the old slab's thickness (mm); more than 0 mm, at most 2000 mm
' old_modulus_mpa: the old slab's modulus of elasticity (MPa); at least 100 MPa, at most 100000 MPa
' Gives equivalent_mm (thickness of the plate of the overlay's concrete that is as stiff as both), overlay_share_ratio (share of the rigidity that the overlay brings), overlay_top_ratio (stress at the top of the overlay, over the plate's bending stress; tension positive), overlay_bottom_ratio (at the bottom of the overlay), old_top_ratio (old slab, at its top), old_bottom_ratio (old slab, at its bottom).
Public Function OVS_TWO_LAYERS_SI(ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal overlay_modulus_mpa As Variant, ByVal old_slab_mm As Variant, ByVal old_modulus_mpa As Variant) As Variant
    OVS_TWO_LAYERS_SI = Called("two_layers", "si", "value", "", Array(bond, overlay_mm, overlay_modulus_mpa, old_slab_mm, old_modulus_mpa))
End Function

Public Function OVS_TWO_LAYERS_SI_WHY(ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal overlay_modulus_mpa As Variant, ByVal old_slab_mm As Variant, ByVal old_modulus_mpa As Variant) As Variant
    OVS_TWO_LAYERS_SI_WHY = Called("two_layers", "si", "why", "", Array(bond, overlay_mm, overlay_modulus_mpa, old_slab_mm, old_modulus_mpa))
End Function

Public Function OVS_TWO_LAYERS_SI_GET(ByVal result As Variant, ByVal bond As Variant, ByVal overlay_mm As Variant, ByVal overlay_modulus_mpa As Variant, ByVal old_slab_mm As Variant, ByVal old_modulus_mpa As Variant) As Variant
    OVS_TWO_LAYERS_SI_GET = Called("two_layers", "si", "get", result, Array(bond, overlay_mm, overlay_modulus_mpa, old_slab_mm, old_modulus_mpa))
End Function

' The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge: concrete is not run out to nothing.
' least_in: least thickness of the overlay (in); more than 0 in, at most 60 in
' at_edge_in: thickness of the overlay at the edge, 0 where it is flush with the old slab (in); at least 0 in, at most 60 in
' growth_in_per_ft: how fast it thickens away from the edge (in/ft); more than 0 in/ft, at most 12 in/ft
' length_ft: length of the edge (ft); more than 0 ft, at most 10498.687664 ft
' room_ft: how far back there is room for the key (ft); more than 0 ft, at most 10498.687664 ft; may be left out
' old_slab_in: thickness of the old slab (in); more than 0 in, at most 78.7401574803 in; may be left out
' Gives cut (what is done at the edge), depth_in (how deep the saw goes at the edge), width_ft (how far back it is chipped), depth_at_back_in (how deep it still is at its back; 0 where it runs out), area_ft2 (chipped area), volume_ft3 (old concrete that comes out, and new concrete that goes in), left_in (what is left of the old slab under the key).
Public Function OVS_EDGE_KEY_US(ByVal least_in As Variant, ByVal at_edge_in As Variant, ByVal growth_in_per_ft As Variant, ByVal length_ft As Variant, Optional ByVal room_ft As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_EDGE_KEY_US = Called("edge_key", "us", "value", "", Array(least_in, at_edge_in, growth_in_per_ft, length_ft, room_ft, old_slab_in))
End Function

Public Function OVS_EDGE_KEY_US_WHY(ByVal least_in As Variant, ByVal at_edge_in As Variant, ByVal growth_in_per_ft As Variant, ByVal length_ft As Variant, Optional ByVal room_ft As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_EDGE_KEY_US_WHY = Called("edge_key", "us", "why", "", Array(least_in, at_edge_in, growth_in_per_ft, length_ft, room_ft, old_slab_in))
End Function

Public Function OVS_EDGE_KEY_US_GET(ByVal result As Variant, ByVal least_in As Variant, ByVal at_edge_in As Variant, ByVal growth_in_per_ft As Variant, ByVal length_ft As Variant, Optional ByVal room_ft As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_EDGE_KEY_US_GET = Called("edge_key", "us", "get", result, Array(least_in, at_edge_in, growth_in_per_ft, length_ft, room_ft, old_slab_in))
End Function

' The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge: concrete is not run out to nothing.
' least_mm: least thickness of the overlay (mm); more than 0 mm, at most 1524 mm
' at_edge_mm: thickness of the overlay at the edge, 0 where it is flush with the old slab (mm); at least 0 mm, at most 1524 mm
' growth_percent: how fast it thickens away from the edge (%); more than 0 %, at most 100 %
' length_m: length of the edge (m); more than 0 m, at most 3200 m
' room_m: how far back there is room for the key (m); more than 0 m, at most 3200 m; may be left out
' old_slab_mm: thickness of the old slab (mm); more than 0 mm, at most 2000 mm; may be left out
' Gives cut (what is done at the edge), depth_mm (how deep the saw goes at the edge), width_m (how far back it is chipped), depth_at_back_mm (how deep it still is at its back; 0 where it runs out), area_m2 (chipped area), volume_l (old concrete that comes out, and new concrete that goes in), left_mm (what is left of the old slab under the key).
Public Function OVS_EDGE_KEY_SI(ByVal least_mm As Variant, ByVal at_edge_mm As Variant, ByVal growth_percent As Variant, ByVal length_m As Variant, Optional ByVal room_m As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_EDGE_KEY_SI = Called("edge_key", "si", "value", "", Array(least_mm, at_edge_mm, growth_percent, length_m, room_m, old_slab_mm))
End Function

Public Function OVS_EDGE_KEY_SI_WHY(ByVal least_mm As Variant, ByVal at_edge_mm As Variant, ByVal growth_percent As Variant, ByVal length_m As Variant, Optional ByVal room_m As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_EDGE_KEY_SI_WHY = Called("edge_key", "si", "why", "", Array(least_mm, at_edge_mm, growth_percent, length_m, room_m, old_slab_mm))
End Function

Public Function OVS_EDGE_KEY_SI_GET(ByVal result As Variant, ByVal least_mm As Variant, ByVal at_edge_mm As Variant, ByVal growth_percent As Variant, ByVal length_m As Variant, Optional ByVal room_m As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_EDGE_KEY_SI_GET = Called("edge_key", "si", "get", result, Array(least_mm, at_edge_mm, growth_percent, length_m, room_m, old_slab_mm))
End Function

' Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped there.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' line_value: the places of the edge; a range with the columns x_ft, y_ft
' least_in: least thickness of the overlay (in); more than 0 in, at most 60 in
' old_slab_in: thickness of the old slab (in); more than 0 in, at most 78.7401574803 in; may be left out
' Gives cuts (the keys; none where the overlay is thick enough), length_ft (length of saw cuts along the edge), area_ft2 (area that is chipped), volume_ft3 (concrete that comes out and goes in, of all keys).
Public Function OVS_KEY_CUTS_US(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_in As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_KEY_CUTS_US = Called("key_cuts", "us", "value", "", Array(survey, finish, line_value, least_in, old_slab_in))
End Function

Public Function OVS_KEY_CUTS_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_in As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_KEY_CUTS_US_WHY = Called("key_cuts", "us", "why", "", Array(survey, finish, line_value, least_in, old_slab_in))
End Function

Public Function OVS_KEY_CUTS_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_in As Variant, Optional ByVal old_slab_in As Variant) As Variant
    OVS_KEY_CUTS_US_GET = Called("key_cuts", "us", "get", result, Array(survey, finish, line_value, least_in, old_slab_in))
End Function

' Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped there.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' line_value: the places of the edge; a range with the columns x_m, y_m
' least_mm: least thickness of the overlay (mm); more than 0 mm, at most 1524 mm
' old_slab_mm: thickness of the old slab (mm); more than 0 mm, at most 2000 mm; may be left out
' Gives cuts (the keys; none where the overlay is thick enough), length_m (length of saw cuts along the edge), area_m2 (area that is chipped), volume_l (concrete that comes out and goes in, of all keys).
Public Function OVS_KEY_CUTS_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_mm As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_KEY_CUTS_SI = Called("key_cuts", "si", "value", "", Array(survey, finish, line_value, least_mm, old_slab_mm))
End Function

Public Function OVS_KEY_CUTS_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_mm As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_KEY_CUTS_SI_WHY = Called("key_cuts", "si", "why", "", Array(survey, finish, line_value, least_mm, old_slab_mm))
End Function

Public Function OVS_KEY_CUTS_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal line_value As Variant, ByVal least_mm As Variant, Optional ByVal old_slab_mm As Variant) As Variant
    OVS_KEY_CUTS_SI_GET = Called("key_cuts", "si", "get", result, Array(survey, finish, line_value, least_mm, old_slab_mm))
End Function

' How many humidity probes a floor takes before it is covered, and how deep their holes are.
' area_ft2: area of the floor (ft2); more than 0 ft2, at most 10763910.4167 ft2
' thickness_in: thickness of the slab that dries: of an overlay on a sheet, its own (in); more than 0 in, at most 78.7401574803 in
' drying: which sides it dries from; one side or two sides
' Gives count (how many probes), depth_in (depth of their holes).
Public Function OVS_MOISTURE_TESTS_US(ByVal area_ft2 As Variant, ByVal thickness_in As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_US = Called("moisture_tests", "us", "value", "", Array(area_ft2, thickness_in, drying))
End Function

Public Function OVS_MOISTURE_TESTS_US_WHY(ByVal area_ft2 As Variant, ByVal thickness_in As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_US_WHY = Called("moisture_tests", "us", "why", "", Array(area_ft2, thickness_in, drying))
End Function

Public Function OVS_MOISTURE_TESTS_US_GET(ByVal result As Variant, ByVal area_ft2 As Variant, ByVal thickness_in As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_US_GET = Called("moisture_tests", "us", "get", result, Array(area_ft2, thickness_in, drying))
End Function

' How many humidity probes a floor takes before it is covered, and how deep their holes are.
' area_m2: area of the floor (m2); more than 0 m2, at most 1000000 m2
' thickness_mm: thickness of the slab that dries: of an overlay on a sheet, its own (mm); more than 0 mm, at most 2000 mm
' drying: which sides it dries from; one side or two sides
' Gives count (how many probes), depth_mm (depth of their holes).
Public Function OVS_MOISTURE_TESTS_SI(ByVal area_m2 As Variant, ByVal thickness_mm As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_SI = Called("moisture_tests", "si", "value", "", Array(area_m2, thickness_mm, drying))
End Function

Public Function OVS_MOISTURE_TESTS_SI_WHY(ByVal area_m2 As Variant, ByVal thickness_mm As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_SI_WHY = Called("moisture_tests", "si", "why", "", Array(area_m2, thickness_mm, drying))
End Function

Public Function OVS_MOISTURE_TESTS_SI_GET(ByVal result As Variant, ByVal area_m2 As Variant, ByVal thickness_mm As Variant, ByVal drying As Variant) As Variant
    OVS_MOISTURE_TESTS_SI_GET = Called("moisture_tests", "si", "get", result, Array(area_m2, thickness_mm, drying))
End Function

' Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.
' readings: what each probe reads; a range with the columns humidity_percent
' limit_percent: the maker's limit (%); more than 0 %, at most 100 %; may be left out
' area_ft2: area of the floor (ft2); more than 0 ft2, at most 10763910.4167 ft2; may be left out
' Gives verdict (what the readings say), highest_percent (highest reading, which governs), wanted (how many probes the area takes; none without an area).
Public Function OVS_MOISTURE_VERDICT_US(ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_ft2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_US = Called("moisture_verdict", "us", "value", "", Array(readings, limit_percent, area_ft2))
End Function

Public Function OVS_MOISTURE_VERDICT_US_WHY(ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_ft2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_US_WHY = Called("moisture_verdict", "us", "why", "", Array(readings, limit_percent, area_ft2))
End Function

Public Function OVS_MOISTURE_VERDICT_US_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_ft2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_US_GET = Called("moisture_verdict", "us", "get", result, Array(readings, limit_percent, area_ft2))
End Function

' Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.
' readings: what each probe reads; a range with the columns humidity_percent
' limit_percent: the maker's limit (%); more than 0 %, at most 100 %; may be left out
' area_m2: area of the floor (m2); more than 0 m2, at most 1000000 m2; may be left out
' Gives verdict (what the readings say), highest_percent (highest reading, which governs), wanted (how many probes the area takes; none without an area).
Public Function OVS_MOISTURE_VERDICT_SI(ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_m2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_SI = Called("moisture_verdict", "si", "value", "", Array(readings, limit_percent, area_m2))
End Function

Public Function OVS_MOISTURE_VERDICT_SI_WHY(ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_m2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_SI_WHY = Called("moisture_verdict", "si", "why", "", Array(readings, limit_percent, area_m2))
End Function

Public Function OVS_MOISTURE_VERDICT_SI_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal limit_percent As Variant, Optional ByVal area_m2 As Variant) As Variant
    OVS_MOISTURE_VERDICT_SI_GET = Called("moisture_verdict", "si", "get", result, Array(readings, limit_percent, area_m2))
End Function

' How long concrete dries, after its curing ends, until it may be tested for a covering.
' thickness_in: thickness that dries (in); more than 0 in, at most 78.7401574803 in
' Gives least_d (least time), greatest_d (greatest time).
Public Function OVS_DRYING_TIME_US(ByVal thickness_in As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_in), "d", x) Then
        status = dll_drying_time_us(x(0), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_DRYING_TIME_US = SideBySide(Array(y1, y2)) Else OVS_DRYING_TIME_US = ErrorFor(status)
        Exit Function
    End If
    OVS_DRYING_TIME_US = Called("drying_time", "us", "value", "", Array(thickness_in))
End Function

Public Function OVS_DRYING_TIME_US_WHY(ByVal thickness_in As Variant) As Variant
    OVS_DRYING_TIME_US_WHY = Called("drying_time", "us", "why", "", Array(thickness_in))
End Function

Public Function OVS_DRYING_TIME_US_GET(ByVal result As Variant, ByVal thickness_in As Variant) As Variant
    OVS_DRYING_TIME_US_GET = Called("drying_time", "us", "get", result, Array(thickness_in))
End Function

' How long concrete dries, after its curing ends, until it may be tested for a covering.
' thickness_mm: thickness that dries (mm); more than 0 mm, at most 2000 mm
' Gives least_d (least time), greatest_d (greatest time).
Public Function OVS_DRYING_TIME_SI(ByVal thickness_mm As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(thickness_mm), "d", x) Then
        status = dll_drying_time_si(x(0), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_DRYING_TIME_SI = SideBySide(Array(y1, y2)) Else OVS_DRYING_TIME_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_DRYING_TIME_SI = Called("drying_time", "si", "value", "", Array(thickness_mm))
End Function

Public Function OVS_DRYING_TIME_SI_WHY(ByVal thickness_mm As Variant) As Variant
    OVS_DRYING_TIME_SI_WHY = Called("drying_time", "si", "why", "", Array(thickness_mm))
End Function

Public Function OVS_DRYING_TIME_SI_GET(ByVal result As Variant, ByVal thickness_mm As Variant) As Variant
    OVS_DRYING_TIME_SI_GET = Called("drying_time", "si", "get", result, Array(thickness_mm))
End Function

' How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement ratio; from memory, confirm.
' water_cement_w_per_cm: water-cement ratio (w/cm); at least 0.4 w/cm, at most 1 w/cm
' Gives time_d (time it takes).
Public Function OVS_DRYING_TIME_BY_WATER_US(ByVal water_cement_w_per_cm As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(water_cement_w_per_cm), "d", x) Then
        status = dll_drying_time_by_water_us(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_DRYING_TIME_BY_WATER_US = y1 Else OVS_DRYING_TIME_BY_WATER_US = ErrorFor(status)
        Exit Function
    End If
    OVS_DRYING_TIME_BY_WATER_US = Called("drying_time_by_water", "us", "value", "", Array(water_cement_w_per_cm))
End Function

Public Function OVS_DRYING_TIME_BY_WATER_US_WHY(ByVal water_cement_w_per_cm As Variant) As Variant
    OVS_DRYING_TIME_BY_WATER_US_WHY = Called("drying_time_by_water", "us", "why", "", Array(water_cement_w_per_cm))
End Function

Public Function OVS_DRYING_TIME_BY_WATER_US_GET(ByVal result As Variant, ByVal water_cement_w_per_cm As Variant) As Variant
    OVS_DRYING_TIME_BY_WATER_US_GET = Called("drying_time_by_water", "us", "get", result, Array(water_cement_w_per_cm))
End Function

' How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement ratio; from memory, confirm.
' water_cement_w_per_cm: water-cement ratio (w/cm); at least 0.4 w/cm, at most 1 w/cm
' Gives time_d (time it takes).
Public Function OVS_DRYING_TIME_BY_WATER_SI(ByVal water_cement_w_per_cm As Variant) As Variant
    Dim x(0 To 0) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(water_cement_w_per_cm), "d", x) Then
        status = dll_drying_time_by_water_si(x(0), y1, notes, msg, 0)
        If status = 0 Then OVS_DRYING_TIME_BY_WATER_SI = y1 Else OVS_DRYING_TIME_BY_WATER_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_DRYING_TIME_BY_WATER_SI = Called("drying_time_by_water", "si", "value", "", Array(water_cement_w_per_cm))
End Function

Public Function OVS_DRYING_TIME_BY_WATER_SI_WHY(ByVal water_cement_w_per_cm As Variant) As Variant
    OVS_DRYING_TIME_BY_WATER_SI_WHY = Called("drying_time_by_water", "si", "why", "", Array(water_cement_w_per_cm))
End Function

Public Function OVS_DRYING_TIME_BY_WATER_SI_GET(ByVal result As Variant, ByVal water_cement_w_per_cm As Variant) As Variant
    OVS_DRYING_TIME_BY_WATER_SI_GET = Called("drying_time_by_water", "si", "get", result, Array(water_cement_w_per_cm))
End Function

' The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.
' gain_g: mass that the dish gained (g); at least 0 g, at most 10000 g
' area_ft2: area of floor under its cover (ft2); more than 0 ft2, at most 107.639104167 ft2
' time_h: how long it stood (h); more than 0 h, at most 2400 h
' Gives emission_lb_per_1000ft2_24h (vapour in 24 h).
Public Function OVS_VAPOUR_EMISSION_US(ByVal gain_g As Variant, ByVal area_ft2 As Variant, ByVal time_h As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(gain_g, area_ft2, time_h), "ddd", x) Then
        status = dll_vapour_emission_us(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_VAPOUR_EMISSION_US = y1 Else OVS_VAPOUR_EMISSION_US = ErrorFor(status)
        Exit Function
    End If
    OVS_VAPOUR_EMISSION_US = Called("vapour_emission", "us", "value", "", Array(gain_g, area_ft2, time_h))
End Function

Public Function OVS_VAPOUR_EMISSION_US_WHY(ByVal gain_g As Variant, ByVal area_ft2 As Variant, ByVal time_h As Variant) As Variant
    OVS_VAPOUR_EMISSION_US_WHY = Called("vapour_emission", "us", "why", "", Array(gain_g, area_ft2, time_h))
End Function

Public Function OVS_VAPOUR_EMISSION_US_GET(ByVal result As Variant, ByVal gain_g As Variant, ByVal area_ft2 As Variant, ByVal time_h As Variant) As Variant
    OVS_VAPOUR_EMISSION_US_GET = Called("vapour_emission", "us", "get", result, Array(gain_g, area_ft2, time_h))
End Function

' The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.
' gain_g: mass that the dish gained (g); at least 0 g, at most 10000 g
' area_m2: area of floor under its cover (m2); more than 0 m2, at most 10 m2
' time_h: how long it stood (h); more than 0 h, at most 2400 h
' Gives emission_g_per_m2_24h (vapour in 24 h).
Public Function OVS_VAPOUR_EMISSION_SI(ByVal gain_g As Variant, ByVal area_m2 As Variant, ByVal time_h As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(gain_g, area_m2, time_h), "ddd", x) Then
        status = dll_vapour_emission_si(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_VAPOUR_EMISSION_SI = y1 Else OVS_VAPOUR_EMISSION_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_VAPOUR_EMISSION_SI = Called("vapour_emission", "si", "value", "", Array(gain_g, area_m2, time_h))
End Function

Public Function OVS_VAPOUR_EMISSION_SI_WHY(ByVal gain_g As Variant, ByVal area_m2 As Variant, ByVal time_h As Variant) As Variant
    OVS_VAPOUR_EMISSION_SI_WHY = Called("vapour_emission", "si", "why", "", Array(gain_g, area_m2, time_h))
End Function

Public Function OVS_VAPOUR_EMISSION_SI_GET(ByVal result As Variant, ByVal gain_g As Variant, ByVal area_m2 As Variant, ByVal time_h As Variant) As Variant
    OVS_VAPOUR_EMISSION_SI_GET = Called("vapour_emission", "si", "get", result, Array(gain_g, area_m2, time_h))
End Function

' What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it stops there.
' thickness_in: thickness of the overlay (in); more than 0 in, at most 78.7401574803 in
' density_lb_per_ft3: unit weight, 150 lb/ft3 with steel (lb/ft3); at least 49.9423684609 lb/ft3, at most 218.497862017 lb/ft3
' support: what carries the old slab; ground, suspended or unknown
' Gives weight_psf (added dead load), next (what follows).
Public Function OVS_ADDED_WEIGHT_US(ByVal thickness_in As Variant, ByVal density_lb_per_ft3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_US = Called("added_weight", "us", "value", "", Array(thickness_in, density_lb_per_ft3, support))
End Function

Public Function OVS_ADDED_WEIGHT_US_WHY(ByVal thickness_in As Variant, ByVal density_lb_per_ft3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_US_WHY = Called("added_weight", "us", "why", "", Array(thickness_in, density_lb_per_ft3, support))
End Function

Public Function OVS_ADDED_WEIGHT_US_GET(ByVal result As Variant, ByVal thickness_in As Variant, ByVal density_lb_per_ft3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_US_GET = Called("added_weight", "us", "get", result, Array(thickness_in, density_lb_per_ft3, support))
End Function

' What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it stops there.
' thickness_mm: thickness of the overlay (mm); more than 0 mm, at most 2000 mm
' density_kg_per_m3: unit weight, 150 lb/ft3 with steel (kg/m3); at least 800 kg/m3, at most 3500 kg/m3
' support: what carries the old slab; ground, suspended or unknown
' Gives weight_kpa (added dead load), next (what follows).
Public Function OVS_ADDED_WEIGHT_SI(ByVal thickness_mm As Variant, ByVal density_kg_per_m3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_SI = Called("added_weight", "si", "value", "", Array(thickness_mm, density_kg_per_m3, support))
End Function

Public Function OVS_ADDED_WEIGHT_SI_WHY(ByVal thickness_mm As Variant, ByVal density_kg_per_m3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_SI_WHY = Called("added_weight", "si", "why", "", Array(thickness_mm, density_kg_per_m3, support))
End Function

Public Function OVS_ADDED_WEIGHT_SI_GET(ByVal result As Variant, ByVal thickness_mm As Variant, ByVal density_kg_per_m3 As Variant, ByVal support As Variant) As Variant
    OVS_ADDED_WEIGHT_SI_GET = Called("added_weight", "si", "get", result, Array(thickness_mm, density_kg_per_m3, support))
End Function

' How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_ft, y_ft, [name]; may be left out
' surface: how the surface is finished and used, which sets the least fall; trowelled, broomed, washed or outdoors; left out: trowelled, because the least of the minimums
' least_fall_in_per_ft: the least fall, in place of that of the surface (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' wave_height_in: height of a wave that strike-off may leave, crest to trough (in); at least 0 in, at most 12 in; left out: 3/16 in, because what hand screeding can leave over 4 ft
' wave_length_ft: length of that wave, crest to crest (ft); more than 0 ft, at most 100 ft; left out: 4 ft, because what hand screeding can leave 3/16 in over
' starts: places from which water is followed; a range with the columns x_ft, y_ft; may be left out
' rain_in_per_h: how fast rain comes down (in/h); at least 0 in/h, at most 39.3700787402 in/h; may be left out
' coefficient_percent: the share of the rain that runs off (%); at least 0 %, at most 100 %; left out: 95 %, because the most that textbooks give for concrete, on the safe side
' Gives judged (whether every facet falls enough, the right way, to an outlet), least_in_per_ft (the least fall that is wanted), least_found_in_per_ft (the least fall of any facet), drained_ft2 (area whose water leaves), held_ft2 (area whose water finds no outlet), puddles (whether the stated wave can hold water), puddle_in (the deepest that it holds on any facet), facets (the facets), catchments (what drains to each end), catchment_corners (the corners of the polygons of the catchments), faults (the parts that drain badly), fault_corners (the corners of their polygons), paths (ways of water), path_places (the places on them).
Public Function OVS_DRAINAGE_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal wave_height_in As Variant, Optional ByVal wave_length_ft As Variant, Optional ByVal starts As Variant, Optional ByVal rain_in_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_US = Called("drainage", "us", "value", "", Array(survey, finish, edges, drains, surface, least_fall_in_per_ft, wave_height_in, wave_length_ft, starts, rain_in_per_h, coefficient_percent))
End Function

Public Function OVS_DRAINAGE_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal wave_height_in As Variant, Optional ByVal wave_length_ft As Variant, Optional ByVal starts As Variant, Optional ByVal rain_in_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_US_WHY = Called("drainage", "us", "why", "", Array(survey, finish, edges, drains, surface, least_fall_in_per_ft, wave_height_in, wave_length_ft, starts, rain_in_per_h, coefficient_percent))
End Function

Public Function OVS_DRAINAGE_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal wave_height_in As Variant, Optional ByVal wave_length_ft As Variant, Optional ByVal starts As Variant, Optional ByVal rain_in_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_US_GET = Called("drainage", "us", "get", result, Array(survey, finish, edges, drains, surface, least_fall_in_per_ft, wave_height_in, wave_length_ft, starts, rain_in_per_h, coefficient_percent))
End Function

' How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_m, y_m, [name]; may be left out
' surface: how the surface is finished and used, which sets the least fall; trowelled, broomed, washed or outdoors; left out: trowelled, because the least of the minimums
' least_fall_percent: the least fall, in place of that of the surface (%); at least 0 %, at most 100 %; may be left out
' wave_height_mm: height of a wave that strike-off may leave, crest to trough (mm); at least 0 mm, at most 304.8 mm; left out: 3/16 in, because what hand screeding can leave over 4 ft
' wave_length_m: length of that wave, crest to crest (m); more than 0 m, at most 30.48 m; left out: 4 ft, because what hand screeding can leave 3/16 in over
' starts: places from which water is followed; a range with the columns x_m, y_m; may be left out
' rain_mm_per_h: how fast rain comes down (mm/h); at least 0 mm/h, at most 1000 mm/h; may be left out
' coefficient_percent: the share of the rain that runs off (%); at least 0 %, at most 100 %; left out: 95 %, because the most that textbooks give for concrete, on the safe side
' Gives judged (whether every facet falls enough, the right way, to an outlet), least_percent (the least fall that is wanted), least_found_percent (the least fall of any facet), drained_m2 (area whose water leaves), held_m2 (area whose water finds no outlet), puddles (whether the stated wave can hold water), puddle_mm (the deepest that it holds on any facet), facets (the facets), catchments (what drains to each end), catchment_corners (the corners of the polygons of the catchments), faults (the parts that drain badly), fault_corners (the corners of their polygons), paths (ways of water), path_places (the places on them).
Public Function OVS_DRAINAGE_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal wave_height_mm As Variant, Optional ByVal wave_length_m As Variant, Optional ByVal starts As Variant, Optional ByVal rain_mm_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_SI = Called("drainage", "si", "value", "", Array(survey, finish, edges, drains, surface, least_fall_percent, wave_height_mm, wave_length_m, starts, rain_mm_per_h, coefficient_percent))
End Function

Public Function OVS_DRAINAGE_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal wave_height_mm As Variant, Optional ByVal wave_length_m As Variant, Optional ByVal starts As Variant, Optional ByVal rain_mm_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_SI_WHY = Called("drainage", "si", "why", "", Array(survey, finish, edges, drains, surface, least_fall_percent, wave_height_mm, wave_length_m, starts, rain_mm_per_h, coefficient_percent))
End Function

Public Function OVS_DRAINAGE_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal wave_height_mm As Variant, Optional ByVal wave_length_m As Variant, Optional ByVal starts As Variant, Optional ByVal rain_mm_per_h As Variant, Optional ByVal coefficient_percent As Variant) As Variant
    OVS_DRAINAGE_SI_GET = Called("drainage", "si", "get", result, Array(survey, finish, edges, drains, surface, least_fall_percent, wave_height_mm, wave_length_m, starts, rain_mm_per_h, coefficient_percent))
End Function

' The least fall at which a wave of the surface holds no water.
' wave_height_in: height of the wave, crest to trough (in); at least 0 in, at most 12 in
' wave_length_ft: length of the wave, crest to crest (ft); more than 0 ft, at most 100 ft
' Gives fall_in_per_ft (the least fall that drains it).
Public Function OVS_PUDDLE_FALL_US(ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wave_height_in, wave_length_ft), "dd", x) Then
        status = dll_puddle_fall_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_PUDDLE_FALL_US = y1 Else OVS_PUDDLE_FALL_US = ErrorFor(status)
        Exit Function
    End If
    OVS_PUDDLE_FALL_US = Called("puddle_fall", "us", "value", "", Array(wave_height_in, wave_length_ft))
End Function

Public Function OVS_PUDDLE_FALL_US_WHY(ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant) As Variant
    OVS_PUDDLE_FALL_US_WHY = Called("puddle_fall", "us", "why", "", Array(wave_height_in, wave_length_ft))
End Function

Public Function OVS_PUDDLE_FALL_US_GET(ByVal result As Variant, ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant) As Variant
    OVS_PUDDLE_FALL_US_GET = Called("puddle_fall", "us", "get", result, Array(wave_height_in, wave_length_ft))
End Function

' The least fall at which a wave of the surface holds no water.
' wave_height_mm: height of the wave, crest to trough (mm); at least 0 mm, at most 304.8 mm
' wave_length_m: length of the wave, crest to crest (m); more than 0 m, at most 30.48 m
' Gives fall_percent (the least fall that drains it).
Public Function OVS_PUDDLE_FALL_SI(ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wave_height_mm, wave_length_m), "dd", x) Then
        status = dll_puddle_fall_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_PUDDLE_FALL_SI = y1 Else OVS_PUDDLE_FALL_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_PUDDLE_FALL_SI = Called("puddle_fall", "si", "value", "", Array(wave_height_mm, wave_length_m))
End Function

Public Function OVS_PUDDLE_FALL_SI_WHY(ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant) As Variant
    OVS_PUDDLE_FALL_SI_WHY = Called("puddle_fall", "si", "why", "", Array(wave_height_mm, wave_length_m))
End Function

Public Function OVS_PUDDLE_FALL_SI_GET(ByVal result As Variant, ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant) As Variant
    OVS_PUDDLE_FALL_SI_GET = Called("puddle_fall", "si", "get", result, Array(wave_height_mm, wave_length_m))
End Function

' How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.
' wave_height_in: height of the wave, crest to trough (in); at least 0 in, at most 12 in
' wave_length_ft: length of the wave, crest to crest (ft); more than 0 ft, at most 100 ft
' fall_in_per_ft: fall of the surface (in/ft); at least 0 in/ft, at most 12 in/ft
' Gives depth_in (greatest depth of the water), greatest_wave_in (the greatest wave of that length that drains).
Public Function OVS_PUDDLE_DEPTH_US(ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wave_height_in, wave_length_ft, fall_in_per_ft), "ddd", x) Then
        status = dll_puddle_depth_us(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_PUDDLE_DEPTH_US = SideBySide(Array(y1, y2)) Else OVS_PUDDLE_DEPTH_US = ErrorFor(status)
        Exit Function
    End If
    OVS_PUDDLE_DEPTH_US = Called("puddle_depth", "us", "value", "", Array(wave_height_in, wave_length_ft, fall_in_per_ft))
End Function

Public Function OVS_PUDDLE_DEPTH_US_WHY(ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    OVS_PUDDLE_DEPTH_US_WHY = Called("puddle_depth", "us", "why", "", Array(wave_height_in, wave_length_ft, fall_in_per_ft))
End Function

Public Function OVS_PUDDLE_DEPTH_US_GET(ByVal result As Variant, ByVal wave_height_in As Variant, ByVal wave_length_ft As Variant, ByVal fall_in_per_ft As Variant) As Variant
    OVS_PUDDLE_DEPTH_US_GET = Called("puddle_depth", "us", "get", result, Array(wave_height_in, wave_length_ft, fall_in_per_ft))
End Function

' How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.
' wave_height_mm: height of the wave, crest to trough (mm); at least 0 mm, at most 304.8 mm
' wave_length_m: length of the wave, crest to crest (m); more than 0 m, at most 30.48 m
' fall_percent: fall of the surface (%); at least 0 %, at most 100 %
' Gives depth_mm (greatest depth of the water), greatest_wave_mm (the greatest wave of that length that drains).
Public Function OVS_PUDDLE_DEPTH_SI(ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant, ByVal fall_percent As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wave_height_mm, wave_length_m, fall_percent), "ddd", x) Then
        status = dll_puddle_depth_si(x(0), x(1), x(2), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_PUDDLE_DEPTH_SI = SideBySide(Array(y1, y2)) Else OVS_PUDDLE_DEPTH_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_PUDDLE_DEPTH_SI = Called("puddle_depth", "si", "value", "", Array(wave_height_mm, wave_length_m, fall_percent))
End Function

Public Function OVS_PUDDLE_DEPTH_SI_WHY(ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant, ByVal fall_percent As Variant) As Variant
    OVS_PUDDLE_DEPTH_SI_WHY = Called("puddle_depth", "si", "why", "", Array(wave_height_mm, wave_length_m, fall_percent))
End Function

Public Function OVS_PUDDLE_DEPTH_SI_GET(ByVal result As Variant, ByVal wave_height_mm As Variant, ByVal wave_length_m As Variant, ByVal fall_percent As Variant) As Variant
    OVS_PUDDLE_DEPTH_SI_GET = Called("puddle_depth", "si", "get", result, Array(wave_height_mm, wave_length_m, fall_percent))
End Function

' The rain that runs off an area, in a volume for each time.
' area_ft2: area that rain falls on (ft2); at least 0 ft2, at most 1076391041.67 ft2
' rain_in_per_h: how fast rain comes down (in/h); at least 0 in/h, at most 39.3700787402 in/h
' coefficient_percent: the share that runs off (%); at least 0 %, at most 100 %
' Gives flow_gal_per_min (water that runs off).
Public Function OVS_RUNOFF_US(ByVal area_ft2 As Variant, ByVal rain_in_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(area_ft2, rain_in_per_h, coefficient_percent), "ddd", x) Then
        status = dll_runoff_us(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_RUNOFF_US = y1 Else OVS_RUNOFF_US = ErrorFor(status)
        Exit Function
    End If
    OVS_RUNOFF_US = Called("runoff", "us", "value", "", Array(area_ft2, rain_in_per_h, coefficient_percent))
End Function

Public Function OVS_RUNOFF_US_WHY(ByVal area_ft2 As Variant, ByVal rain_in_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    OVS_RUNOFF_US_WHY = Called("runoff", "us", "why", "", Array(area_ft2, rain_in_per_h, coefficient_percent))
End Function

Public Function OVS_RUNOFF_US_GET(ByVal result As Variant, ByVal area_ft2 As Variant, ByVal rain_in_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    OVS_RUNOFF_US_GET = Called("runoff", "us", "get", result, Array(area_ft2, rain_in_per_h, coefficient_percent))
End Function

' The rain that runs off an area, in a volume for each time.
' area_m2: area that rain falls on (m2); at least 0 m2, at most 100000000 m2
' rain_mm_per_h: how fast rain comes down (mm/h); at least 0 mm/h, at most 1000 mm/h
' coefficient_percent: the share that runs off (%); at least 0 %, at most 100 %
' Gives flow_l_per_s (water that runs off).
Public Function OVS_RUNOFF_SI(ByVal area_m2 As Variant, ByVal rain_mm_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(area_m2, rain_mm_per_h, coefficient_percent), "ddd", x) Then
        status = dll_runoff_si(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_RUNOFF_SI = y1 Else OVS_RUNOFF_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_RUNOFF_SI = Called("runoff", "si", "value", "", Array(area_m2, rain_mm_per_h, coefficient_percent))
End Function

Public Function OVS_RUNOFF_SI_WHY(ByVal area_m2 As Variant, ByVal rain_mm_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    OVS_RUNOFF_SI_WHY = Called("runoff", "si", "why", "", Array(area_m2, rain_mm_per_h, coefficient_percent))
End Function

Public Function OVS_RUNOFF_SI_GET(ByVal result As Variant, ByVal area_m2 As Variant, ByVal rain_mm_per_h As Variant, ByVal coefficient_percent As Variant) As Variant
    OVS_RUNOFF_SI_GET = Called("runoff", "si", "get", result, Array(area_m2, rain_mm_per_h, coefficient_percent))
End Function

' A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks, the step at the door, and a drain along the door instead.
' floor_ft: height of the floor at the door; or a finish with the places of the door (ft); at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out
' finish: the new top surface, whose lowest place along the door counts; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives; may be left out
' door: places along the door; a range with the columns x_ft, y_ft; may be left out
' profile: the ground outside; a range with the columns distance_ft, elevation_ft
' traffic: what goes over it; vehicle, wheelchair or foot; left out: vehicle, because most approaches are driven on
' fall_percent: fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not given (%); at least 0 %, at most 100 %; may be left out
' over_ft: over which distance from the door (ft); more than 0 ft, at most 3280.83989501 ft; left out: 10 ft, because the rule for ground by buildings
' tie_in_ft: how far from the door a new approach meets the ground (ft); more than 0 ft, at most 3280.83989501 ft; may be left out
' thickness_in: how thick the new approach is (in); at least 0 in, at most 39.3700787402 in; may be left out
' rebate_in: how far the outside lies below the floor at the door (in); at least 0 in, at most 39.3700787402 in; may be left out
' wheelbase_in: from axle to axle (in); more than 0 in, at most 590.551181102 in; may be left out
' clearance_in: room under the vehicle between its axles (in); at least 0 in, at most 39.3700787402 in; may be left out
' overhang_in: from the front axle to the bumper (in); more than 0 in, at most 590.551181102 in; may be left out
' bumper_in: room under the bumper (in); at least 0 in, at most 39.3700787402 in; may be left out
' door_width_ft: how wide the door is, for a drain along it (ft); more than 0 ft, at most 3280.83989501 ft; may be left out
' rain_in_per_h: how fast rain comes down on hard ground, for that drain (in/h); at least 0 in/h, at most 39.3700787402 in/h; may be left out
' Gives judged (whether every limit is kept), needed_ft (the floor height from which water falls away as wanted), governing_ft (how far from the door the place is that decides it), spare_in (how far the floor is above that; negative below), away (what that does to the water), step_in (the step at the door, from the outside up to the floor), step_limit_in (the most that it may be), step_judged (whether it is), dig_in (how deep old ground has to come out under the new approach; none without tie-in and thickness), trench_floor_ft (the height that the floor may have with a drain along the door), trench_reach_ft (how far out the ground falls to the door), trench_area_ft2 (the ground that drains to the door; none without its width), trench_flow_gal_per_min (the rain that comes from it; none without rain), stretches (the ground as it will be), breaks (where its grade changes), rules (every rule at every place).
Public Function OVS_APPROACH_US(Optional ByVal floor_ft As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_ft As Variant, Optional ByVal tie_in_ft As Variant, Optional ByVal thickness_in As Variant, Optional ByVal rebate_in As Variant, Optional ByVal wheelbase_in As Variant, Optional ByVal clearance_in As Variant, Optional ByVal overhang_in As Variant, Optional ByVal bumper_in As Variant, Optional ByVal door_width_ft As Variant, Optional ByVal rain_in_per_h As Variant) As Variant
    OVS_APPROACH_US = Called("approach", "us", "value", "", Array(floor_ft, finish, door, profile, traffic, fall_percent, over_ft, tie_in_ft, thickness_in, rebate_in, wheelbase_in, clearance_in, overhang_in, bumper_in, door_width_ft, rain_in_per_h))
End Function

Public Function OVS_APPROACH_US_WHY(Optional ByVal floor_ft As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_ft As Variant, Optional ByVal tie_in_ft As Variant, Optional ByVal thickness_in As Variant, Optional ByVal rebate_in As Variant, Optional ByVal wheelbase_in As Variant, Optional ByVal clearance_in As Variant, Optional ByVal overhang_in As Variant, Optional ByVal bumper_in As Variant, Optional ByVal door_width_ft As Variant, Optional ByVal rain_in_per_h As Variant) As Variant
    OVS_APPROACH_US_WHY = Called("approach", "us", "why", "", Array(floor_ft, finish, door, profile, traffic, fall_percent, over_ft, tie_in_ft, thickness_in, rebate_in, wheelbase_in, clearance_in, overhang_in, bumper_in, door_width_ft, rain_in_per_h))
End Function

Public Function OVS_APPROACH_US_GET(ByVal result As Variant, Optional ByVal floor_ft As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_ft As Variant, Optional ByVal tie_in_ft As Variant, Optional ByVal thickness_in As Variant, Optional ByVal rebate_in As Variant, Optional ByVal wheelbase_in As Variant, Optional ByVal clearance_in As Variant, Optional ByVal overhang_in As Variant, Optional ByVal bumper_in As Variant, Optional ByVal door_width_ft As Variant, Optional ByVal rain_in_per_h As Variant) As Variant
    OVS_APPROACH_US_GET = Called("approach", "us", "get", result, Array(floor_ft, finish, door, profile, traffic, fall_percent, over_ft, tie_in_ft, thickness_in, rebate_in, wheelbase_in, clearance_in, overhang_in, bumper_in, door_width_ft, rain_in_per_h))
End Function

' A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks, the step at the door, and a drain along the door instead.
' floor_m: height of the floor at the door; or a finish with the places of the door (m); at least -10000 m, at most 10000 m; may be left out
' finish: the new top surface, whose lowest place along the door counts; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives; may be left out
' door: places along the door; a range with the columns x_m, y_m; may be left out
' profile: the ground outside; a range with the columns distance_m, elevation_m
' traffic: what goes over it; vehicle, wheelchair or foot; left out: vehicle, because most approaches are driven on
' fall_percent: fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not given (%); at least 0 %, at most 100 %; may be left out
' over_m: over which distance from the door (m); more than 0 m, at most 1000 m; left out: 10 ft, because the rule for ground by buildings
' tie_in_m: how far from the door a new approach meets the ground (m); more than 0 m, at most 1000 m; may be left out
' thickness_mm: how thick the new approach is (mm); at least 0 mm, at most 1000 mm; may be left out
' rebate_mm: how far the outside lies below the floor at the door (mm); at least 0 mm, at most 1000 mm; may be left out
' wheelbase_mm: from axle to axle (mm); more than 0 mm, at most 15000 mm; may be left out
' clearance_mm: room under the vehicle between its axles (mm); at least 0 mm, at most 1000 mm; may be left out
' overhang_mm: from the front axle to the bumper (mm); more than 0 mm, at most 15000 mm; may be left out
' bumper_mm: room under the bumper (mm); at least 0 mm, at most 1000 mm; may be left out
' door_width_m: how wide the door is, for a drain along it (m); more than 0 m, at most 1000 m; may be left out
' rain_mm_per_h: how fast rain comes down on hard ground, for that drain (mm/h); at least 0 mm/h, at most 1000 mm/h; may be left out
' Gives judged (whether every limit is kept), needed_m (the floor height from which water falls away as wanted), governing_m (how far from the door the place is that decides it), spare_mm (how far the floor is above that; negative below), away (what that does to the water), step_mm (the step at the door, from the outside up to the floor), step_limit_mm (the most that it may be), step_judged (whether it is), dig_mm (how deep old ground has to come out under the new approach; none without tie-in and thickness), trench_floor_m (the height that the floor may have with a drain along the door), trench_reach_m (how far out the ground falls to the door), trench_area_m2 (the ground that drains to the door; none without its width), trench_flow_l_per_s (the rain that comes from it; none without rain), stretches (the ground as it will be), breaks (where its grade changes), rules (every rule at every place).
Public Function OVS_APPROACH_SI(Optional ByVal floor_m As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_m As Variant, Optional ByVal tie_in_m As Variant, Optional ByVal thickness_mm As Variant, Optional ByVal rebate_mm As Variant, Optional ByVal wheelbase_mm As Variant, Optional ByVal clearance_mm As Variant, Optional ByVal overhang_mm As Variant, Optional ByVal bumper_mm As Variant, Optional ByVal door_width_m As Variant, Optional ByVal rain_mm_per_h As Variant) As Variant
    OVS_APPROACH_SI = Called("approach", "si", "value", "", Array(floor_m, finish, door, profile, traffic, fall_percent, over_m, tie_in_m, thickness_mm, rebate_mm, wheelbase_mm, clearance_mm, overhang_mm, bumper_mm, door_width_m, rain_mm_per_h))
End Function

Public Function OVS_APPROACH_SI_WHY(Optional ByVal floor_m As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_m As Variant, Optional ByVal tie_in_m As Variant, Optional ByVal thickness_mm As Variant, Optional ByVal rebate_mm As Variant, Optional ByVal wheelbase_mm As Variant, Optional ByVal clearance_mm As Variant, Optional ByVal overhang_mm As Variant, Optional ByVal bumper_mm As Variant, Optional ByVal door_width_m As Variant, Optional ByVal rain_mm_per_h As Variant) As Variant
    OVS_APPROACH_SI_WHY = Called("approach", "si", "why", "", Array(floor_m, finish, door, profile, traffic, fall_percent, over_m, tie_in_m, thickness_mm, rebate_mm, wheelbase_mm, clearance_mm, overhang_mm, bumper_mm, door_width_m, rain_mm_per_h))
End Function

Public Function OVS_APPROACH_SI_GET(ByVal result As Variant, Optional ByVal floor_m As Variant, Optional ByVal finish As Variant, Optional ByVal door As Variant, Optional ByVal profile As Variant, Optional ByVal traffic As Variant, Optional ByVal fall_percent As Variant, Optional ByVal over_m As Variant, Optional ByVal tie_in_m As Variant, Optional ByVal thickness_mm As Variant, Optional ByVal rebate_mm As Variant, Optional ByVal wheelbase_mm As Variant, Optional ByVal clearance_mm As Variant, Optional ByVal overhang_mm As Variant, Optional ByVal bumper_mm As Variant, Optional ByVal door_width_m As Variant, Optional ByVal rain_mm_per_h As Variant) As Variant
    OVS_APPROACH_SI_GET = Called("approach", "si", "get", result, Array(floor_m, finish, door, profile, traffic, fall_percent, over_m, tie_in_m, thickness_mm, rebate_mm, wheelbase_mm, clearance_mm, overhang_mm, bumper_mm, door_width_m, rain_mm_per_h))
End Function

' What a crest takes of the room under a vehicle, midway between its axles.
' wheelbase_in: from axle to axle (in); more than 0 in, at most 590.551181102 in
' change_percent: change of grade (%); at least 0 %, at most 100 %
' Gives lost_in (room taken, slopes for angles), exact_in (room taken, exactly).
Public Function OVS_CREST_CLEARANCE_US(ByVal wheelbase_in As Variant, ByVal change_percent As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wheelbase_in, change_percent), "dd", x) Then
        status = dll_crest_clearance_us(x(0), x(1), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_CREST_CLEARANCE_US = SideBySide(Array(y1, y2)) Else OVS_CREST_CLEARANCE_US = ErrorFor(status)
        Exit Function
    End If
    OVS_CREST_CLEARANCE_US = Called("crest_clearance", "us", "value", "", Array(wheelbase_in, change_percent))
End Function

Public Function OVS_CREST_CLEARANCE_US_WHY(ByVal wheelbase_in As Variant, ByVal change_percent As Variant) As Variant
    OVS_CREST_CLEARANCE_US_WHY = Called("crest_clearance", "us", "why", "", Array(wheelbase_in, change_percent))
End Function

Public Function OVS_CREST_CLEARANCE_US_GET(ByVal result As Variant, ByVal wheelbase_in As Variant, ByVal change_percent As Variant) As Variant
    OVS_CREST_CLEARANCE_US_GET = Called("crest_clearance", "us", "get", result, Array(wheelbase_in, change_percent))
End Function

' What a crest takes of the room under a vehicle, midway between its axles.
' wheelbase_mm: from axle to axle (mm); more than 0 mm, at most 15000 mm
' change_percent: change of grade (%); at least 0 %, at most 100 %
' Gives lost_mm (room taken, slopes for angles), exact_mm (room taken, exactly).
Public Function OVS_CREST_CLEARANCE_SI(ByVal wheelbase_mm As Variant, ByVal change_percent As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(wheelbase_mm, change_percent), "dd", x) Then
        status = dll_crest_clearance_si(x(0), x(1), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_CREST_CLEARANCE_SI = SideBySide(Array(y1, y2)) Else OVS_CREST_CLEARANCE_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_CREST_CLEARANCE_SI = Called("crest_clearance", "si", "value", "", Array(wheelbase_mm, change_percent))
End Function

Public Function OVS_CREST_CLEARANCE_SI_WHY(ByVal wheelbase_mm As Variant, ByVal change_percent As Variant) As Variant
    OVS_CREST_CLEARANCE_SI_WHY = Called("crest_clearance", "si", "why", "", Array(wheelbase_mm, change_percent))
End Function

Public Function OVS_CREST_CLEARANCE_SI_GET(ByVal result As Variant, ByVal wheelbase_mm As Variant, ByVal change_percent As Variant) As Variant
    OVS_CREST_CLEARANCE_SI_GET = Called("crest_clearance", "si", "get", result, Array(wheelbase_mm, change_percent))
End Function

' The greatest change of grade of a sag that a bumper clears.
' overhang_in: from the front axle to the bumper (in); more than 0 in, at most 590.551181102 in
' bumper_in: room under the bumper (in); at least 0 in, at most 39.3700787402 in
' Gives change_percent (the greatest change of grade).
Public Function OVS_SAG_BREAK_US(ByVal overhang_in As Variant, ByVal bumper_in As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(overhang_in, bumper_in), "dd", x) Then
        status = dll_sag_break_us(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_SAG_BREAK_US = y1 Else OVS_SAG_BREAK_US = ErrorFor(status)
        Exit Function
    End If
    OVS_SAG_BREAK_US = Called("sag_break", "us", "value", "", Array(overhang_in, bumper_in))
End Function

Public Function OVS_SAG_BREAK_US_WHY(ByVal overhang_in As Variant, ByVal bumper_in As Variant) As Variant
    OVS_SAG_BREAK_US_WHY = Called("sag_break", "us", "why", "", Array(overhang_in, bumper_in))
End Function

Public Function OVS_SAG_BREAK_US_GET(ByVal result As Variant, ByVal overhang_in As Variant, ByVal bumper_in As Variant) As Variant
    OVS_SAG_BREAK_US_GET = Called("sag_break", "us", "get", result, Array(overhang_in, bumper_in))
End Function

' The greatest change of grade of a sag that a bumper clears.
' overhang_mm: from the front axle to the bumper (mm); more than 0 mm, at most 15000 mm
' bumper_mm: room under the bumper (mm); at least 0 mm, at most 1000 mm
' Gives change_percent (the greatest change of grade).
Public Function OVS_SAG_BREAK_SI(ByVal overhang_mm As Variant, ByVal bumper_mm As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(overhang_mm, bumper_mm), "dd", x) Then
        status = dll_sag_break_si(x(0), x(1), y1, notes, msg, 0)
        If status = 0 Then OVS_SAG_BREAK_SI = y1 Else OVS_SAG_BREAK_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_SAG_BREAK_SI = Called("sag_break", "si", "value", "", Array(overhang_mm, bumper_mm))
End Function

Public Function OVS_SAG_BREAK_SI_WHY(ByVal overhang_mm As Variant, ByVal bumper_mm As Variant) As Variant
    OVS_SAG_BREAK_SI_WHY = Called("sag_break", "si", "why", "", Array(overhang_mm, bumper_mm))
End Function

Public Function OVS_SAG_BREAK_SI_GET(ByVal result As Variant, ByVal overhang_mm As Variant, ByVal bumper_mm As Variant) As Variant
    OVS_SAG_BREAK_SI_GET = Called("sag_break", "si", "get", result, Array(overhang_mm, bumper_mm))
End Function

' Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by how much, what the raise forces and whose trade that is.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' things: the things that it meets; a range with the columns name, kind, x_ft, y_ft, [to_x_ft], [to_y_ft], [elevation_ft], [above_slab_in], [needed_in], [seal_takes_in], [eyes_now_in], [gap_now_in], [gap_in], [covering_in], [may_lose_in], [swing], [runs_outside], [fire_rated], [exit], [risers], [riser_count], [flight_in], [end], [ground_ft], [ground_to_ft], [free_in], [exposed], [vehicles], [listed], [kept_free], [located], [route]
' Gives passed (things that still work), confirm_locally (things that break a limit which is to be confirmed locally), ask (things of which a measure that decides is missing), fail (things that do not work as they stand), judgements (each thing), checks (each check of each thing), works (the work that the raise forces), text (the same for the site, one thing to a line).
Public Function OVS_CLEARANCES_US(ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_US = Called("clearances", "us", "value", "", Array(survey, finish, things))
End Function

Public Function OVS_CLEARANCES_US_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_US_WHY = Called("clearances", "us", "why", "", Array(survey, finish, things))
End Function

Public Function OVS_CLEARANCES_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_US_GET = Called("clearances", "us", "get", result, Array(survey, finish, things))
End Function

' Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by how much, what the raise forces and whose trade that is.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the new top surface; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' things: the things that it meets; a range with the columns name, kind, x_m, y_m, [to_x_m], [to_y_m], [elevation_m], [above_slab_mm], [needed_mm], [seal_takes_mm], [eyes_now_mm], [gap_now_mm], [gap_mm], [covering_mm], [may_lose_mm], [swing], [runs_outside], [fire_rated], [exit], [risers], [riser_count], [flight_mm], [end], [ground_m], [ground_to_m], [free_mm], [exposed], [vehicles], [listed], [kept_free], [located], [route]
' Gives passed (things that still work), confirm_locally (things that break a limit which is to be confirmed locally), ask (things of which a measure that decides is missing), fail (things that do not work as they stand), judgements (each thing), checks (each check of each thing), works (the work that the raise forces), text (the same for the site, one thing to a line).
Public Function OVS_CLEARANCES_SI(ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_SI = Called("clearances", "si", "value", "", Array(survey, finish, things))
End Function

Public Function OVS_CLEARANCES_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_SI_WHY = Called("clearances", "si", "why", "", Array(survey, finish, things))
End Function

Public Function OVS_CLEARANCES_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, ByVal things As Variant) As Variant
    OVS_CLEARANCES_SI_GET = Called("clearances", "si", "get", result, Array(survey, finish, things))
End Function

' The volume of a slab, a ramp or a step from its length, width and mean depth.
' length_ft: length (ft); more than 0 ft, at most 32808.3989501 ft
' width_ft: width (ft); more than 0 ft, at most 32808.3989501 ft
' depth_in: mean depth (in); more than 0 in, at most 3937.00787402 in
' Gives volume_yd3 (volume).
Public Function OVS_BLOCK_US(ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal depth_in As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_ft, width_ft, depth_in), "ddd", x) Then
        status = dll_block_us(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_BLOCK_US = y1 Else OVS_BLOCK_US = ErrorFor(status)
        Exit Function
    End If
    OVS_BLOCK_US = Called("block", "us", "value", "", Array(length_ft, width_ft, depth_in))
End Function

Public Function OVS_BLOCK_US_WHY(ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal depth_in As Variant) As Variant
    OVS_BLOCK_US_WHY = Called("block", "us", "why", "", Array(length_ft, width_ft, depth_in))
End Function

Public Function OVS_BLOCK_US_GET(ByVal result As Variant, ByVal length_ft As Variant, ByVal width_ft As Variant, ByVal depth_in As Variant) As Variant
    OVS_BLOCK_US_GET = Called("block", "us", "get", result, Array(length_ft, width_ft, depth_in))
End Function

' The volume of a slab, a ramp or a step from its length, width and mean depth.
' length_m: length (m); more than 0 m, at most 10000 m
' width_m: width (m); more than 0 m, at most 10000 m
' depth_mm: mean depth (mm); more than 0 mm, at most 100000 mm
' Gives volume_m3 (volume).
Public Function OVS_BLOCK_SI(ByVal length_m As Variant, ByVal width_m As Variant, ByVal depth_mm As Variant) As Variant
    Dim x(0 To 2) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_m, width_m, depth_mm), "ddd", x) Then
        status = dll_block_si(x(0), x(1), x(2), y1, notes, msg, 0)
        If status = 0 Then OVS_BLOCK_SI = y1 Else OVS_BLOCK_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_BLOCK_SI = Called("block", "si", "value", "", Array(length_m, width_m, depth_mm))
End Function

Public Function OVS_BLOCK_SI_WHY(ByVal length_m As Variant, ByVal width_m As Variant, ByVal depth_mm As Variant) As Variant
    OVS_BLOCK_SI_WHY = Called("block", "si", "why", "", Array(length_m, width_m, depth_mm))
End Function

Public Function OVS_BLOCK_SI_GET(ByVal result As Variant, ByVal length_m As Variant, ByVal width_m As Variant, ByVal depth_mm As Variant) As Variant
    OVS_BLOCK_SI_GET = Called("block", "si", "get", result, Array(length_m, width_m, depth_mm))
End Function

' The volume of a body between two end sections with a third half way.
' length_ft: length between the end sections (ft); more than 0 ft, at most 32808.3989501 ft
' first_ft2: area of the first section (ft2); at least 0 ft2, at most 10763910.4167 ft2
' middle_ft2: area of the section half way (ft2); at least 0 ft2, at most 10763910.4167 ft2
' last_ft2: area of the last section (ft2); at least 0 ft2, at most 10763910.4167 ft2
' Gives volume_yd3 (volume of the body).
Public Function OVS_PRISMOID_US(ByVal length_ft As Variant, ByVal first_ft2 As Variant, ByVal middle_ft2 As Variant, ByVal last_ft2 As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_ft, first_ft2, middle_ft2, last_ft2), "dddd", x) Then
        status = dll_prismoid_us(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_PRISMOID_US = y1 Else OVS_PRISMOID_US = ErrorFor(status)
        Exit Function
    End If
    OVS_PRISMOID_US = Called("prismoid", "us", "value", "", Array(length_ft, first_ft2, middle_ft2, last_ft2))
End Function

Public Function OVS_PRISMOID_US_WHY(ByVal length_ft As Variant, ByVal first_ft2 As Variant, ByVal middle_ft2 As Variant, ByVal last_ft2 As Variant) As Variant
    OVS_PRISMOID_US_WHY = Called("prismoid", "us", "why", "", Array(length_ft, first_ft2, middle_ft2, last_ft2))
End Function

Public Function OVS_PRISMOID_US_GET(ByVal result As Variant, ByVal length_ft As Variant, ByVal first_ft2 As Variant, ByVal middle_ft2 As Variant, ByVal last_ft2 As Variant) As Variant
    OVS_PRISMOID_US_GET = Called("prismoid", "us", "get", result, Array(length_ft, first_ft2, middle_ft2, last_ft2))
End Function

' The volume of a body between two end sections with a third half way.
' length_m: length between the end sections (m); more than 0 m, at most 10000 m
' first_m2: area of the first section (m2); at least 0 m2, at most 1000000 m2
' middle_m2: area of the section half way (m2); at least 0 m2, at most 1000000 m2
' last_m2: area of the last section (m2); at least 0 m2, at most 1000000 m2
' Gives volume_m3 (volume of the body).
Public Function OVS_PRISMOID_SI(ByVal length_m As Variant, ByVal first_m2 As Variant, ByVal middle_m2 As Variant, ByVal last_m2 As Variant) As Variant
    Dim x(0 To 3) As Double, y1 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(length_m, first_m2, middle_m2, last_m2), "dddd", x) Then
        status = dll_prismoid_si(x(0), x(1), x(2), x(3), y1, notes, msg, 0)
        If status = 0 Then OVS_PRISMOID_SI = y1 Else OVS_PRISMOID_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_PRISMOID_SI = Called("prismoid", "si", "value", "", Array(length_m, first_m2, middle_m2, last_m2))
End Function

Public Function OVS_PRISMOID_SI_WHY(ByVal length_m As Variant, ByVal first_m2 As Variant, ByVal middle_m2 As Variant, ByVal last_m2 As Variant) As Variant
    OVS_PRISMOID_SI_WHY = Called("prismoid", "si", "why", "", Array(length_m, first_m2, middle_m2, last_m2))
End Function

Public Function OVS_PRISMOID_SI_GET(ByVal result As Variant, ByVal length_m As Variant, ByVal first_m2 As Variant, ByVal middle_m2 As Variant, ByVal last_m2 As Variant) As Variant
    OVS_PRISMOID_SI_GET = Called("prismoid", "si", "get", result, Array(length_m, first_m2, middle_m2, last_m2))
End Function

' How many truck loads an order takes, and what the last one carries.
' ordered_yd3: volume ordered (yd3); more than 0 yd3, at most 130795.061931 yd3
' capacity_yd3: what one truck carries (yd3); at least 0.130795061931 yd3, at most 26.1590123863 yd3
' Gives loads (truck loads), last_yd3 (what the last truck carries).
Public Function OVS_TRUCKS_US(ByVal ordered_yd3 As Variant, ByVal capacity_yd3 As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Long, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(ordered_yd3, capacity_yd3), "dd", x) Then
        status = dll_trucks_us(x(0), x(1), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_TRUCKS_US = SideBySide(Array(y1, y2)) Else OVS_TRUCKS_US = ErrorFor(status)
        Exit Function
    End If
    OVS_TRUCKS_US = Called("trucks", "us", "value", "", Array(ordered_yd3, capacity_yd3))
End Function

Public Function OVS_TRUCKS_US_WHY(ByVal ordered_yd3 As Variant, ByVal capacity_yd3 As Variant) As Variant
    OVS_TRUCKS_US_WHY = Called("trucks", "us", "why", "", Array(ordered_yd3, capacity_yd3))
End Function

Public Function OVS_TRUCKS_US_GET(ByVal result As Variant, ByVal ordered_yd3 As Variant, ByVal capacity_yd3 As Variant) As Variant
    OVS_TRUCKS_US_GET = Called("trucks", "us", "get", result, Array(ordered_yd3, capacity_yd3))
End Function

' How many truck loads an order takes, and what the last one carries.
' ordered_m3: volume ordered (m3); more than 0 m3, at most 100000 m3
' capacity_m3: what one truck carries (m3); at least 0.1 m3, at most 20 m3
' Gives loads (truck loads), last_m3 (what the last truck carries).
Public Function OVS_TRUCKS_SI(ByVal ordered_m3 As Variant, ByVal capacity_m3 As Variant) As Variant
    Dim x(0 To 1) As Double, y1 As Long, y2 As Double, notes As Long, msg As Byte, status As Long
    If Flat(Array(ordered_m3, capacity_m3), "dd", x) Then
        status = dll_trucks_si(x(0), x(1), y1, y2, notes, msg, 0)
        If status = 0 Then OVS_TRUCKS_SI = SideBySide(Array(y1, y2)) Else OVS_TRUCKS_SI = ErrorFor(status)
        Exit Function
    End If
    OVS_TRUCKS_SI = Called("trucks", "si", "value", "", Array(ordered_m3, capacity_m3))
End Function

Public Function OVS_TRUCKS_SI_WHY(ByVal ordered_m3 As Variant, ByVal capacity_m3 As Variant) As Variant
    OVS_TRUCKS_SI_WHY = Called("trucks", "si", "why", "", Array(ordered_m3, capacity_m3))
End Function

Public Function OVS_TRUCKS_SI_GET(ByVal result As Variant, ByVal ordered_m3 As Variant, ByVal capacity_m3 As Variant) As Variant
    OVS_TRUCKS_SI_GET = Called("trucks", "si", "get", result, Array(ordered_m3, capacity_m3))
End Function

' What to order: net volume, named allowances, the plant's step, trucks.
' floor_yd3: volume of the floor (yd3); at least 0 yd3, at most 130795.061931 yd3
' extras: volumes poured beside the floor; a range with the columns name, volume_yd3; may be left out
' allowances: shares allowed on top; a range with the columns name, share_percent; left out: [{"name": "waste", "share": "3 %"}], because a surveyed floor: what sticks to tools and strike-off
' step_yd3: the step the plant sells by (yd3); at least 0.00130795061931 yd3, at most 6.53975309657 yd3; left out: 1/4 yd3, because plants usually sell by the quarter yard
' capacity_yd3: what one truck carries (yd3); at least 0.130795061931 yd3, at most 26.1590123863 yd3; left out: 10 yd3, because a full truck carries about so much
' Gives net_yd3 (sum of what is poured), figured_yd3 (net volume and allowances), ordered_yd3 (figured volume rounded up to the step), spare_yd3 (ordered over figured), loads (truck loads), last_yd3 (what the last truck carries), allowed (each allowance as a volume).
Public Function OVS_ORDER_US(ByVal floor_yd3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_yd3 As Variant, Optional ByVal capacity_yd3 As Variant) As Variant
    OVS_ORDER_US = Called("order", "us", "value", "", Array(floor_yd3, extras, allowances, step_yd3, capacity_yd3))
End Function

Public Function OVS_ORDER_US_WHY(ByVal floor_yd3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_yd3 As Variant, Optional ByVal capacity_yd3 As Variant) As Variant
    OVS_ORDER_US_WHY = Called("order", "us", "why", "", Array(floor_yd3, extras, allowances, step_yd3, capacity_yd3))
End Function

Public Function OVS_ORDER_US_GET(ByVal result As Variant, ByVal floor_yd3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_yd3 As Variant, Optional ByVal capacity_yd3 As Variant) As Variant
    OVS_ORDER_US_GET = Called("order", "us", "get", result, Array(floor_yd3, extras, allowances, step_yd3, capacity_yd3))
End Function

' What to order: net volume, named allowances, the plant's step, trucks.
' floor_m3: volume of the floor (m3); at least 0 m3, at most 100000 m3
' extras: volumes poured beside the floor; a range with the columns name, volume_m3; may be left out
' allowances: shares allowed on top; a range with the columns name, share_percent; left out: [{"name": "waste", "share": "3 %"}], because a surveyed floor: what sticks to tools and strike-off
' step_m3: the step the plant sells by (m3); at least 0.001 m3, at most 5 m3; left out: 1/4 yd3, because plants usually sell by the quarter yard
' capacity_m3: what one truck carries (m3); at least 0.1 m3, at most 20 m3; left out: 10 yd3, because a full truck carries about so much
' Gives net_m3 (sum of what is poured), figured_m3 (net volume and allowances), ordered_m3 (figured volume rounded up to the step), spare_m3 (ordered over figured), loads (truck loads), last_m3 (what the last truck carries), allowed (each allowance as a volume).
Public Function OVS_ORDER_SI(ByVal floor_m3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_m3 As Variant, Optional ByVal capacity_m3 As Variant) As Variant
    OVS_ORDER_SI = Called("order", "si", "value", "", Array(floor_m3, extras, allowances, step_m3, capacity_m3))
End Function

Public Function OVS_ORDER_SI_WHY(ByVal floor_m3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_m3 As Variant, Optional ByVal capacity_m3 As Variant) As Variant
    OVS_ORDER_SI_WHY = Called("order", "si", "why", "", Array(floor_m3, extras, allowances, step_m3, capacity_m3))
End Function

Public Function OVS_ORDER_SI_GET(ByVal result As Variant, ByVal floor_m3 As Variant, Optional ByVal extras As Variant, Optional ByVal allowances As Variant, Optional ByVal step_m3 As Variant, Optional ByVal capacity_m3 As Variant) As Variant
    OVS_ORDER_SI_GET = Called("order", "si", "get", result, Array(floor_m3, extras, allowances, step_m3, capacity_m3))
End Function

' Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
' readings: the readings; a range with the columns elevation_in
' spacing_in: how far apart the readings stand: 12 in or 300 mm (in); at least 0.393700787402 in, at most 393.700787402 in; left out: 12 in, because the standard in inches reads every foot
' factor: the constant for flatness, as the standard's text in inches or in millimetres has it; 4.57 in or 115.8 mm; left out: 4.57 in, because the text in inches came first
' Gives ff_ratio (flatness; none for a perfect line), fl_ratio (levelness; none for fewer than 12 readings and for a level line), length_ft (length of the line), q_count (how many bends), q_mean_in (their mean), q_deviation_in (their standard deviation), z_count (how many rises over ten spacings), z_mean_in (their mean), z_deviation_in (their standard deviation; none of fewer than two), q (the bends), z (the rises over ten spacings).
Public Function OVS_FLATNESS_LINE_US(ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_US = Called("flatness_line", "us", "value", "", Array(readings, spacing_in, factor))
End Function

Public Function OVS_FLATNESS_LINE_US_WHY(ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_US_WHY = Called("flatness_line", "us", "why", "", Array(readings, spacing_in, factor))
End Function

Public Function OVS_FLATNESS_LINE_US_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_US_GET = Called("flatness_line", "us", "get", result, Array(readings, spacing_in, factor))
End Function

' Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
' readings: the readings; a range with the columns elevation_mm
' spacing_mm: how far apart the readings stand: 12 in or 300 mm (mm); at least 10 mm, at most 10000 mm; left out: 12 in, because the standard in inches reads every foot
' factor: the constant for flatness, as the standard's text in inches or in millimetres has it; 4.57 in or 115.8 mm; left out: 4.57 in, because the text in inches came first
' Gives ff_ratio (flatness; none for a perfect line), fl_ratio (levelness; none for fewer than 12 readings and for a level line), length_m (length of the line), q_count (how many bends), q_mean_mm (their mean), q_deviation_mm (their standard deviation), z_count (how many rises over ten spacings), z_mean_mm (their mean), z_deviation_mm (their standard deviation; none of fewer than two), q (the bends), z (the rises over ten spacings).
Public Function OVS_FLATNESS_LINE_SI(ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_SI = Called("flatness_line", "si", "value", "", Array(readings, spacing_mm, factor))
End Function

Public Function OVS_FLATNESS_LINE_SI_WHY(ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_SI_WHY = Called("flatness_line", "si", "why", "", Array(readings, spacing_mm, factor))
End Function

Public Function OVS_FLATNESS_LINE_SI_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant) As Variant
    OVS_FLATNESS_LINE_SI_GET = Called("flatness_line", "si", "get", result, Array(readings, spacing_mm, factor))
End Function

' Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is asked.
' readings: the readings of all lines; a range with the columns line, elevation_in, [section]
' spacing_in: how far apart the readings stand: 12 in or 300 mm (in); at least 0.393700787402 in, at most 393.700787402 in; left out: 12 in, because the standard in inches reads every foot
' factor: the constant for flatness, as the standard's text in inches or in millimetres has it; 4.57 in or 115.8 mm; left out: 4.57 in, because the text in inches came first
' sections: the areas of the sections, or of the floor; a range with the columns section, area_ft2; may be left out
' flatness_class: the class asked; conventional, moderately flat, flat, very flat or super flat; may be left out
' least_ff_ratio: flatness asked over all, in place of a class (1); at least 1 1, at most 1000 1; may be left out
' least_fl_ratio: levelness asked over all, in place of a class (1); at least 1 1, at most 1000 1; may be left out
' falls: whether the floor is to fall; no or yes; left out: no, because a finish that is given tells by itself
' places: where the lines run; a range with the columns line, x_ft, y_ft, toward_x_ft, toward_y_ft; may be left out
' finish: the plan: where it bends, readings of lines with a place are left out; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives; may be left out
' outline: the plan edge, which lines keep 2 ft from; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_US or OVS_OUTLINE_FROM_SIDES_US gives; may be left out
' Gives ff_ratio (flatness over all), fl_ratio (levelness over all), asked_ff_ratio (flatness asked over all), asked_fl_ratio (levelness asked over all), local_ff_ratio (flatness asked of every section), local_fl_ratio (levelness asked of every section), ff_verdict (flatness over all against what is asked), fl_verdict (levelness over all against what is asked), lines (the lines), of_sections (the parts of the floor).
Public Function OVS_FLATNESS_US(ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_US = Called("flatness", "us", "value", "", Array(readings, spacing_in, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

Public Function OVS_FLATNESS_US_WHY(ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_US_WHY = Called("flatness", "us", "why", "", Array(readings, spacing_in, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

Public Function OVS_FLATNESS_US_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal spacing_in As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_US_GET = Called("flatness", "us", "get", result, Array(readings, spacing_in, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

' Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is asked.
' readings: the readings of all lines; a range with the columns line, elevation_mm, [section]
' spacing_mm: how far apart the readings stand: 12 in or 300 mm (mm); at least 10 mm, at most 10000 mm; left out: 12 in, because the standard in inches reads every foot
' factor: the constant for flatness, as the standard's text in inches or in millimetres has it; 4.57 in or 115.8 mm; left out: 4.57 in, because the text in inches came first
' sections: the areas of the sections, or of the floor; a range with the columns section, area_m2; may be left out
' flatness_class: the class asked; conventional, moderately flat, flat, very flat or super flat; may be left out
' least_ff_ratio: flatness asked over all, in place of a class (1); at least 1 1, at most 1000 1; may be left out
' least_fl_ratio: levelness asked over all, in place of a class (1); at least 1 1, at most 1000 1; may be left out
' falls: whether the floor is to fall; no or yes; left out: no, because a finish that is given tells by itself
' places: where the lines run; a range with the columns line, x_m, y_m, toward_x_m, toward_y_m; may be left out
' finish: the plan: where it bends, readings of lines with a place are left out; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives; may be left out
' outline: the plan edge, which lines keep 2 ft from; a range of path, value, unit, as OVS_OUTLINE_FROM_CORNERS_SI or OVS_OUTLINE_FROM_SIDES_SI gives; may be left out
' Gives ff_ratio (flatness over all), fl_ratio (levelness over all), asked_ff_ratio (flatness asked over all), asked_fl_ratio (levelness asked over all), local_ff_ratio (flatness asked of every section), local_fl_ratio (levelness asked of every section), ff_verdict (flatness over all against what is asked), fl_verdict (levelness over all against what is asked), lines (the lines), of_sections (the parts of the floor).
Public Function OVS_FLATNESS_SI(ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_SI = Called("flatness", "si", "value", "", Array(readings, spacing_mm, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

Public Function OVS_FLATNESS_SI_WHY(ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_SI_WHY = Called("flatness", "si", "why", "", Array(readings, spacing_mm, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

Public Function OVS_FLATNESS_SI_GET(ByVal result As Variant, ByVal readings As Variant, Optional ByVal spacing_mm As Variant, Optional ByVal factor As Variant, Optional ByVal sections As Variant, Optional ByVal flatness_class As Variant, Optional ByVal least_ff_ratio As Variant, Optional ByVal least_fl_ratio As Variant, Optional ByVal falls As Variant, Optional ByVal places As Variant, Optional ByVal finish As Variant, Optional ByVal outline As Variant) As Variant
    OVS_FLATNESS_SI_GET = Called("flatness", "si", "get", result, Array(readings, spacing_mm, factor, sections, flatness_class, least_ff_ratio, least_fl_ratio, falls, places, finish, outline))
End Function

' One F-number for several lines, by their readings, or for several sections, by their areas.
' parts: the lines or the sections; a range with the columns number_ratio, [readings], [area_ft2]
' Gives number_ratio (the number for all).
Public Function OVS_FLATNESS_COMBINED_US(ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_US = Called("flatness_combined", "us", "value", "", Array(parts))
End Function

Public Function OVS_FLATNESS_COMBINED_US_WHY(ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_US_WHY = Called("flatness_combined", "us", "why", "", Array(parts))
End Function

Public Function OVS_FLATNESS_COMBINED_US_GET(ByVal result As Variant, ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_US_GET = Called("flatness_combined", "us", "get", result, Array(parts))
End Function

' One F-number for several lines, by their readings, or for several sections, by their areas.
' parts: the lines or the sections; a range with the columns number_ratio, [readings], [area_m2]
' Gives number_ratio (the number for all).
Public Function OVS_FLATNESS_COMBINED_SI(ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_SI = Called("flatness_combined", "si", "value", "", Array(parts))
End Function

Public Function OVS_FLATNESS_COMBINED_SI_WHY(ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_SI_WHY = Called("flatness_combined", "si", "why", "", Array(parts))
End Function

Public Function OVS_FLATNESS_COMBINED_SI_GET(ByVal result As Variant, ByVal parts As Variant) As Variant
    OVS_FLATNESS_COMBINED_SI_GET = Called("flatness_combined", "si", "get", result, Array(parts))
End Function

' The gap under a straightedge laid along a line of readings, from each reading on.
' profile: the readings, three or more; a range with the columns distance_ft, elevation_in
' length_ft: length of the straightedge (ft); more than 0 ft, at most 100 ft; left out: 10 ft, because the limits are told for 10 ft
' flatness_class: class to hold the gaps against; under 10 ft only; conventional, moderately flat or flat; may be left out
' Gives gap_in (the greatest gap), gap_at_ft (where it is), rest_1_ft (first place the straightedge rests there), rest_2_ft (second place it rests there), count (how often it was laid down), about_ff_ratio (flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in), within_most_percent (share of gaps within what nine in ten must keep), within_all_percent (share of gaps within what all must keep), verdict (whether the class is kept), placements (the straightedge laid down from each reading on).
Public Function OVS_STRAIGHTEDGE_US(ByVal profile As Variant, Optional ByVal length_ft As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_US = Called("straightedge", "us", "value", "", Array(profile, length_ft, flatness_class))
End Function

Public Function OVS_STRAIGHTEDGE_US_WHY(ByVal profile As Variant, Optional ByVal length_ft As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_US_WHY = Called("straightedge", "us", "why", "", Array(profile, length_ft, flatness_class))
End Function

Public Function OVS_STRAIGHTEDGE_US_GET(ByVal result As Variant, ByVal profile As Variant, Optional ByVal length_ft As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_US_GET = Called("straightedge", "us", "get", result, Array(profile, length_ft, flatness_class))
End Function

' The gap under a straightedge laid along a line of readings, from each reading on.
' profile: the readings, three or more; a range with the columns distance_m, elevation_mm
' length_m: length of the straightedge (m); more than 0 m, at most 30.48 m; left out: 10 ft, because the limits are told for 10 ft
' flatness_class: class to hold the gaps against; under 10 ft only; conventional, moderately flat or flat; may be left out
' Gives gap_mm (the greatest gap), gap_at_m (where it is), rest_1_m (first place the straightedge rests there), rest_2_m (second place it rests there), count (how often it was laid down), about_ff_ratio (flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in), within_most_percent (share of gaps within what nine in ten must keep), within_all_percent (share of gaps within what all must keep), verdict (whether the class is kept), placements (the straightedge laid down from each reading on).
Public Function OVS_STRAIGHTEDGE_SI(ByVal profile As Variant, Optional ByVal length_m As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_SI = Called("straightedge", "si", "value", "", Array(profile, length_m, flatness_class))
End Function

Public Function OVS_STRAIGHTEDGE_SI_WHY(ByVal profile As Variant, Optional ByVal length_m As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_SI_WHY = Called("straightedge", "si", "why", "", Array(profile, length_m, flatness_class))
End Function

Public Function OVS_STRAIGHTEDGE_SI_GET(ByVal result As Variant, ByVal profile As Variant, Optional ByVal length_m As Variant, Optional ByVal flatness_class As Variant) As Variant
    OVS_STRAIGHTEDGE_SI_GET = Called("straightedge", "si", "get", result, Array(profile, length_m, flatness_class))
End Function

' The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what to mend.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives
' finish: the plan; a range of path, value, unit, as OVS_FINISH_LEVEL_US or OVS_FINISH_FROM_POINTS_US or OVS_FINISH_TO_EDGE_US or OVS_FINISH_AT_LEAST_US or OVS_FINISH_FROM_FACETS_US or OVS_FINISH_FROM_PLANES_US or OVS_FINISH_TO_VALLEY_US or OVS_FINISH_CROWN_US or OVS_FINISH_TO_TRENCH_US or OVS_FINISH_TO_DRAIN_US or OVS_FINISH_WITH_STRIP_US gives
' shots: the shots of the new floor; a range with the columns x_ft, y_ft, elevation_ft, [name]; may be left out
' new_floor: the new floor as surveyed, in place of shots; over the same plan edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives; may be left out
' tolerance_in: how far a shot may be off the plan (in); more than 0 in, at most 12 in; left out: 1/4 in, because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane
' specified_in: the thickness specified (in); at least 0 in, at most 120 in; may be left out
' least_in: the least thickness allowed anywhere (in); at least 0 in, at most 120 in; may be left out
' surface: how the floor is finished and used: its least fall; trowelled, broomed, washed or outdoors; may be left out
' least_fall_in_per_ft: the least fall, in place of that of the surface (in/ft); at least 0 in/ft, at most 12 in/ft; may be left out
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_ft, y_ft, [name]; may be left out
' shallowest_in: ponds shallower than this are left out (in); at least 0 in, at most 12 in; left out: 1/16 in, because a rod hardly tells less
' ordered_yd3: concrete that came (yd3); at least 0 yd3, at most 13079.5061931 yd3; may be left out
' left_over_yd3: concrete that was left over (yd3); at least 0 yd3, at most 13079.5061931 yd3; may be left out
' puddles: puddles that were seen; a range with the columns x_ft, y_ft, [depth_in]; may be left out
' Gives count (how many shots on the work), missed (how many of them are off by more than the tolerance), mean_deviation_in (mean of shot less planned; positive is high), deviation_in (standard deviation of shot less planned; none of one shot), highest_in (greatest of shot less planned), lowest_in (least of shot less planned), mean_over_area_in (mean over the area of new floor less plan), thickness_mean_in (mean thickness got), thickness_least_in (least thickness got), least_x_ft (where it is, from the left), least_y_ft (where it is, from the front), least_measured_in (least thickness got between the shots of the old slab), thickness_greatest_in (greatest thickness got), greatest_x_ft (where that is, from the left), greatest_y_ft (where that is, from the front), thinner_ft2 (area thinner than the least allowed, or else than specified), planned_mean_in (mean thickness planned), planned_volume_yd3 (concrete figured),
'   volume_yd3 (concrete in place, between old slab and new floor), used_yd3 (concrete used: what came less what was left over), unaccounted_yd3 (used less in place), used_over_planned_ratio (used over figured), said (all of it in a few sentences: what holds, what does not, what to mend), checks (what was asked, and whether it was kept), deviations (the shots beside the plan), falls (the slopes got), ponds (where water stands), seen (the puddles seen beside the water of the shots), mends (what to mend).
Public Function OVS_AS_BUILT_US(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal specified_in As Variant, Optional ByVal least_in As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal ordered_yd3 As Variant, Optional ByVal left_over_yd3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_US = Called("as_built", "us", "value", "", Array(survey, finish, shots, new_floor, tolerance_in, specified_in, least_in, surface, least_fall_in_per_ft, edges, drains, shallowest_in, ordered_yd3, left_over_yd3, puddles))
End Function

Public Function OVS_AS_BUILT_US_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal specified_in As Variant, Optional ByVal least_in As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal ordered_yd3 As Variant, Optional ByVal left_over_yd3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_US_WHY = Called("as_built", "us", "why", "", Array(survey, finish, shots, new_floor, tolerance_in, specified_in, least_in, surface, least_fall_in_per_ft, edges, drains, shallowest_in, ordered_yd3, left_over_yd3, puddles))
End Function

Public Function OVS_AS_BUILT_US_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_in As Variant, Optional ByVal specified_in As Variant, Optional ByVal least_in As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_in_per_ft As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_in As Variant, Optional ByVal ordered_yd3 As Variant, Optional ByVal left_over_yd3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_US_GET = Called("as_built", "us", "get", result, Array(survey, finish, shots, new_floor, tolerance_in, specified_in, least_in, surface, least_fall_in_per_ft, edges, drains, shallowest_in, ordered_yd3, left_over_yd3, puddles))
End Function

' The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what to mend.
' survey: the old slab; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives
' finish: the plan; a range of path, value, unit, as OVS_FINISH_LEVEL_SI or OVS_FINISH_FROM_POINTS_SI or OVS_FINISH_TO_EDGE_SI or OVS_FINISH_AT_LEAST_SI or OVS_FINISH_FROM_FACETS_SI or OVS_FINISH_FROM_PLANES_SI or OVS_FINISH_TO_VALLEY_SI or OVS_FINISH_CROWN_SI or OVS_FINISH_TO_TRENCH_SI or OVS_FINISH_TO_DRAIN_SI or OVS_FINISH_WITH_STRIP_SI gives
' shots: the shots of the new floor; a range with the columns x_m, y_m, elevation_m, [name]; may be left out
' new_floor: the new floor as surveyed, in place of shots; over the same plan edge; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives; may be left out
' tolerance_mm: how far a shot may be off the plan (mm); more than 0 mm, at most 304.8 mm; left out: 1/4 in, because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane
' specified_mm: the thickness specified (mm); at least 0 mm, at most 3048 mm; may be left out
' least_mm: the least thickness allowed anywhere (mm); at least 0 mm, at most 3048 mm; may be left out
' surface: how the floor is finished and used: its least fall; trowelled, broomed, washed or outdoors; may be left out
' least_fall_percent: the least fall, in place of that of the surface (%); at least 0 %, at most 100 %; may be left out
' edges: edges that are walled, open or drained; a range with the columns edge, state; may be left out
' drains: drains in the floor; a range with the columns x_m, y_m, [name]; may be left out
' shallowest_mm: ponds shallower than this are left out (mm); at least 0 mm, at most 304.8 mm; left out: 1/16 in, because a rod hardly tells less
' ordered_m3: concrete that came (m3); at least 0 m3, at most 10000 m3; may be left out
' left_over_m3: concrete that was left over (m3); at least 0 m3, at most 10000 m3; may be left out
' puddles: puddles that were seen; a range with the columns x_m, y_m, [depth_mm]; may be left out
' Gives count (how many shots on the work), missed (how many of them are off by more than the tolerance), mean_deviation_mm (mean of shot less planned; positive is high), deviation_mm (standard deviation of shot less planned; none of one shot), highest_mm (greatest of shot less planned), lowest_mm (least of shot less planned), mean_over_area_mm (mean over the area of new floor less plan), thickness_mean_mm (mean thickness got), thickness_least_mm (least thickness got), least_x_m (where it is, from the left), least_y_m (where it is, from the front), least_measured_mm (least thickness got between the shots of the old slab), thickness_greatest_mm (greatest thickness got), greatest_x_m (where that is, from the left), greatest_y_m (where that is, from the front), thinner_m2 (area thinner than the least allowed, or else than specified), planned_mean_mm (mean thickness planned), planned_volume_m3 (concrete figured),
'   volume_m3 (concrete in place, between old slab and new floor), used_m3 (concrete used: what came less what was left over), unaccounted_m3 (used less in place), used_over_planned_ratio (used over figured), said (all of it in a few sentences: what holds, what does not, what to mend), checks (what was asked, and whether it was kept), deviations (the shots beside the plan), falls (the slopes got), ponds (where water stands), seen (the puddles seen beside the water of the shots), mends (what to mend).
Public Function OVS_AS_BUILT_SI(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal specified_mm As Variant, Optional ByVal least_mm As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal ordered_m3 As Variant, Optional ByVal left_over_m3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_SI = Called("as_built", "si", "value", "", Array(survey, finish, shots, new_floor, tolerance_mm, specified_mm, least_mm, surface, least_fall_percent, edges, drains, shallowest_mm, ordered_m3, left_over_m3, puddles))
End Function

Public Function OVS_AS_BUILT_SI_WHY(ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal specified_mm As Variant, Optional ByVal least_mm As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal ordered_m3 As Variant, Optional ByVal left_over_m3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_SI_WHY = Called("as_built", "si", "why", "", Array(survey, finish, shots, new_floor, tolerance_mm, specified_mm, least_mm, surface, least_fall_percent, edges, drains, shallowest_mm, ordered_m3, left_over_m3, puddles))
End Function

Public Function OVS_AS_BUILT_SI_GET(ByVal result As Variant, ByVal survey As Variant, ByVal finish As Variant, Optional ByVal shots As Variant, Optional ByVal new_floor As Variant, Optional ByVal tolerance_mm As Variant, Optional ByVal specified_mm As Variant, Optional ByVal least_mm As Variant, Optional ByVal surface As Variant, Optional ByVal least_fall_percent As Variant, Optional ByVal edges As Variant, Optional ByVal drains As Variant, Optional ByVal shallowest_mm As Variant, Optional ByVal ordered_m3 As Variant, Optional ByVal left_over_m3 As Variant, Optional ByVal puddles As Variant) As Variant
    OVS_AS_BUILT_SI_GET = Called("as_built", "si", "get", result, Array(survey, finish, shots, new_floor, tolerance_mm, specified_mm, least_mm, surface, least_fall_percent, edges, drains, shallowest_mm, ordered_m3, left_over_m3, puddles))
End Function

' Reads a job description from TOML or JSON.
' text_value: the job description; a text
' Gives job (the job).
Public Function OVS_JOB_FROM_TEXT_US(ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_US = Called("job_from_text", "us", "value", "", Array(text_value))
End Function

Public Function OVS_JOB_FROM_TEXT_US_WHY(ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_US_WHY = Called("job_from_text", "us", "why", "", Array(text_value))
End Function

Public Function OVS_JOB_FROM_TEXT_US_GET(ByVal result As Variant, ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_US_GET = Called("job_from_text", "us", "get", result, Array(text_value))
End Function

' Reads a job description from TOML or JSON.
' text_value: the job description; a text
' Gives job (the job).
Public Function OVS_JOB_FROM_TEXT_SI(ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_SI = Called("job_from_text", "si", "value", "", Array(text_value))
End Function

Public Function OVS_JOB_FROM_TEXT_SI_WHY(ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_SI_WHY = Called("job_from_text", "si", "why", "", Array(text_value))
End Function

Public Function OVS_JOB_FROM_TEXT_SI_GET(ByVal result As Variant, ByVal text_value As Variant) As Variant
    OVS_JOB_FROM_TEXT_SI_GET = Called("job_from_text", "si", "get", result, Array(text_value))
End Function

' The report of a whole job: its main figures, as text for the site, and as JSON for a program.
' job: the job; a range of path, value, unit, as OVS_JOB_FROM_TEXT_US gives
' survey: the old slab, for a job that does not describe one itself; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_US or OVS_SURVEY_FROM_FACES_US or OVS_SURVEY_FROM_GRID_US or OVS_SURVEY_FROM_RODS_US or OVS_SURVEY_WITHOUT_US or OVS_SURVEY_FROM_POINTS_US or OVS_SURVEY_FROM_TIN_US gives; may be left out
' Gives ordered_yd3 (concrete to order), figured_yd3 (net volume of all parts and allowances), loads (truck loads), net_yd3 (volume of the floor, net), least_in (least thickness between the shots), greatest_in (greatest thickness), mean_in (mean thickness), text (the report for the site), json (the report as JSON).
Public Function OVS_REPORT_US(ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_US = Called("report", "us", "value", "", Array(job, survey))
End Function

Public Function OVS_REPORT_US_WHY(ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_US_WHY = Called("report", "us", "why", "", Array(job, survey))
End Function

Public Function OVS_REPORT_US_GET(ByVal result As Variant, ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_US_GET = Called("report", "us", "get", result, Array(job, survey))
End Function

' The report of a whole job: its main figures, as text for the site, and as JSON for a program.
' job: the job; a range of path, value, unit, as OVS_JOB_FROM_TEXT_SI gives
' survey: the old slab, for a job that does not describe one itself; a range of path, value, unit, as OVS_SURVEY_FROM_SHOTS_SI or OVS_SURVEY_FROM_FACES_SI or OVS_SURVEY_FROM_GRID_SI or OVS_SURVEY_FROM_RODS_SI or OVS_SURVEY_WITHOUT_SI or OVS_SURVEY_FROM_POINTS_SI or OVS_SURVEY_FROM_TIN_SI gives; may be left out
' Gives ordered_m3 (concrete to order), figured_m3 (net volume of all parts and allowances), loads (truck loads), net_m3 (volume of the floor, net), least_mm (least thickness between the shots), greatest_mm (greatest thickness), mean_mm (mean thickness), text (the report for the site), json (the report as JSON).
Public Function OVS_REPORT_SI(ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_SI = Called("report", "si", "value", "", Array(job, survey))
End Function

Public Function OVS_REPORT_SI_WHY(ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_SI_WHY = Called("report", "si", "why", "", Array(job, survey))
End Function

Public Function OVS_REPORT_SI_GET(ByVal result As Variant, ByVal job As Variant, Optional ByVal survey As Variant) As Variant
    OVS_REPORT_SI_GET = Called("report", "si", "get", result, Array(job, survey))
End Function
